import { bearingNotDecoded } from './bearing/bearing-not-decoded.ts';
import { bearingUnsized } from './bearing/bearing-unsized.ts';
import { codeAndSizeDisagree } from './bearing/code-and-size-disagree.ts';
import { codeMisread } from './bearing/code-misread.ts';
import { codeObsolete } from './bearing/code-obsolete.ts';
import { fullComplementInWater } from './bearing/full-complement-in-water.ts';
import { houseCodeUnknown } from './bearing/house-code-unknown.ts';
import { shieldInWater } from './bearing/shield-in-water.ts';
import { sizesDiffer } from './bearing/sizes-differ.ts';
import { suffixAmbiguous } from './bearing/suffix-ambiguous.ts';
import type { Check } from './check.ts';
import { clearanceCold } from './clearance/clearance-cold.ts';
import { clearanceHot } from './clearance/clearance-hot.ts';
import { clearanceUsedUp } from './clearance/clearance-used-up.ts';
import { ballsDiffer } from './cup/balls-differ.ts';
import { ballsTooFew } from './cup/balls-too-few.ts';
import { ballsTooMany } from './cup/balls-too-many.ts';
import { benchPlayLarge } from './cup/bench-play-large.ts';
import { benchPlaySmall } from './cup/bench-play-small.ts';
import { cupMissing } from './cup/cup-missing.ts';
import { endCapBottoms } from './end-cap/end-cap-bottoms.ts';
import { endCapHitsShell } from './end-cap/end-cap-hits-shell.ts';
import { endCapRubs } from './end-cap/end-cap-rubs.ts';
import { endCapsSwapped } from './end-cap/end-caps-swapped.ts';
import { spigotOffAxle } from './end-cap/spigot-off-axle.ts';
import { flangeOutsideStack } from './flange/flange-outside-stack.ts';
import { spokeHoleSmall } from './flange/spoke-hole-small.ts';
import { bearingOutOfReach } from './freehub/bearing-out-of-reach.ts';
import { freehubGapOff } from './freehub/freehub-gap-off.ts';
import { freehubRubs } from './freehub/freehub-rubs.ts';
import { retainingRingForgotten } from './freehub/retaining-ring-forgotten.ts';
import { journalFitOff } from './journal/journal-fit-off.ts';
import { journalOff } from './journal/journal-off.ts';
import { adjusterOff } from './play/adjuster-off.ts';
import { adjusterShort } from './play/adjuster-short.ts';
import { clampTakesPlay } from './play/clamp-takes-play.ts';
import { lineTight } from './play/line-tight.ts';
import { pairOpen } from './play/pair-open.ts';
import { playHigh } from './play/play-high.ts';
import { playShare } from './play/play-share.ts';
import { preloadHigh } from './play/preload-high.ts';
import { sleeveStress } from './play/sleeve-stress.ts';
import { spacerLong } from './play/spacer-long.ts';
import { spacerShort } from './play/spacer-short.ts';
import { circularReference } from './reference/circular-reference.ts';
import { fileNotFound } from './reference/file-not-found.ts';
import { nameNotFound } from './reference/name-not-found.ts';
import { outsideWorkspace } from './reference/outside-workspace.ts';
import { variantNotFound } from './reference/variant-not-found.ts';
import { wrongKindOfFile } from './reference/wrong-kind-of-file.ts';
import { compoundGap } from './seat/compound-gap.ts';
import { filletTooLarge } from './seat/fillet-too-large.ts';
import { fitClassUnknown } from './seat/fit-class-unknown.ts';
import { fitUnusual } from './seat/fit-unusual.ts';
import { housingLengthOff } from './seat/housing-length-off.ts';
import { landShort } from './seat/land-short.ts';
import { readingTooCoarse } from './seat/reading-too-coarse.ts';
import { retainingRingNoRoom } from './seat/retaining-ring-no-room.ts';
import { retainingRingOff } from './seat/retaining-ring-off.ts';
import { seatBoreOff } from './seat/seat-bore-off.ts';
import { seatLetsGo } from './seat/seat-lets-go.ts';
import { seatLoose } from './seat/seat-loose.ts';
import { seatOverTight } from './seat/seat-over-tight.ts';
import { seatProud } from './seat/seat-proud.ts';
import { seatTooDeep } from './seat/seat-too-deep.ts';
import { shoulderTooLow } from './seat/shoulder-too-low.ts';
import { shoulderTouchesInner } from './seat/shoulder-touches-inner.ts';
import { wallStress } from './seat/wall-stress.ts';
import { wallThin } from './seat/wall-thin.ts';
import { driverMissing } from './service/driver-missing.ts';
import { partsLockEachOther } from './service/parts-lock-each-other.ts';
import { ringNotNamed } from './service/ring-not-named.ts';
import { bearingWithoutSeat } from './stack/bearing-without-seat.ts';
import { gapClosed } from './stack/gap-closed.ts';
import { partOutOfOrder } from './stack/part-out-of-order.ts';
import { seatWithoutBearing } from './stack/seat-without-bearing.ts';
import { spacerOffAxle } from './stack/spacer-off-axle.ts';
import { spacerRubs } from './stack/spacer-rubs.ts';
import { symmetricPartsDiffer } from './stack/symmetric-parts-differ.ts';
import { wallMissing } from './stack/wall-missing.ts';
import { widthCorner } from './stack/width-corner.ts';
import { widthOff } from './stack/width-off.ts';
import { allowUnused } from './text/allow-unused.ts';
import { allowWithoutReason } from './text/allow-without-reason.ts';
import { anchorNotRead } from './text/anchor-not-read.ts';
import { conflictMarkers } from './text/conflict-markers.ts';
import { decimalComma } from './text/decimal-comma.ts';
import { dimensionNotUnderstood } from './text/dimension-not-understood.ts';
import { duplicateKey } from './text/duplicate-key.ts';
import { duplicateName } from './text/duplicate-name.ts';
import { emptyFile } from './text/empty-file.ts';
import { fileTooLarge } from './text/file-too-large.ts';
import { keyOutOfPlace } from './text/key-out-of-place.ts';
import { limitUnknown } from './text/limit-unknown.ts';
import { missingKey } from './text/missing-key.ts';
import { moreThanOneDocument } from './text/more-than-one-document.ts';
import { tabIndentation } from './text/tab-indentation.ts';
import { unknownKey } from './text/unknown-key.ts';
import { unknownKind } from './text/unknown-kind.ts';
import { valueNotUnderstood } from './text/value-not-understood.ts';
import { wrongUnit } from './text/wrong-unit.ts';
import { yamlSyntax } from './text/yaml-syntax.ts';
import { variantBreaksWidth } from './variant/variant-breaks-width.ts';
import { variantChangesNothing } from './variant/variant-changes-nothing.ts';
import { variantPartMissing } from './variant/variant-part-missing.ts';
import { crossingImpossible } from './wheel/crossing-impossible.ts';
import { holesDisagree } from './wheel/holes-disagree.ts';
import { lengthsSwapped } from './wheel/lengths-swapped.ts';
import { phaseMissing } from './wheel/phase-missing.ts';
import { readingsMissing } from './wheel/readings-missing.ts';
import { slackSideLow } from './wheel/slack-side-low.ts';
import { spokeLengthOff } from './wheel/spoke-length-off.ts';
import { spokesGoSlack } from './wheel/spokes-go-slack.ts';
import { tensionOverLimit } from './wheel/tension-over-limit.ts';
import { tensionsUneven } from './wheel/tensions-uneven.ts';
import { threadsFew } from './wheel/threads-few.ts';

/**
 * Every check there is, by group. A line here is all it takes to register one. Of two findings that doubt each
 * other's value the earlier check is heard, so what reads a value comes before what compares it.
 */
export const checks: readonly Check[] = [
  allowUnused,
  allowWithoutReason,
  anchorNotRead,
  conflictMarkers,
  decimalComma,
  dimensionNotUnderstood,
  duplicateKey,
  duplicateName,
  emptyFile,
  fileTooLarge,
  keyOutOfPlace,
  limitUnknown,
  missingKey,
  moreThanOneDocument,
  tabIndentation,
  unknownKey,
  unknownKind,
  valueNotUnderstood,
  wrongUnit,
  yamlSyntax,
  bearingNotDecoded,
  bearingUnsized,
  codeAndSizeDisagree,
  codeMisread,
  codeObsolete,
  fullComplementInWater,
  houseCodeUnknown,
  shieldInWater,
  sizesDiffer,
  suffixAmbiguous,
  circularReference,
  fileNotFound,
  nameNotFound,
  outsideWorkspace,
  variantNotFound,
  wrongKindOfFile,
  bearingWithoutSeat,
  gapClosed,
  partOutOfOrder,
  seatWithoutBearing,
  spacerOffAxle,
  spacerRubs,
  symmetricPartsDiffer,
  wallMissing,
  widthCorner,
  widthOff,
  filletTooLarge,
  fitClassUnknown,
  fitUnusual,
  housingLengthOff,
  landShort,
  readingTooCoarse,
  retainingRingNoRoom,
  retainingRingOff,
  seatBoreOff,
  seatLetsGo,
  seatLoose,
  compoundGap,
  seatOverTight,
  seatProud,
  seatTooDeep,
  shoulderTooLow,
  shoulderTouchesInner,
  wallStress,
  wallThin,
  journalFitOff,
  journalOff,
  clearanceCold,
  clearanceHot,
  clearanceUsedUp,
  adjusterShort,
  adjusterOff,
  clampTakesPlay,
  pairOpen,
  preloadHigh,
  playHigh,
  playShare,
  sleeveStress,
  spacerLong,
  spacerShort,
  lineTight,
  cupMissing,
  ballsTooMany,
  ballsTooFew,
  ballsDiffer,
  benchPlaySmall,
  benchPlayLarge,
  endCapBottoms,
  endCapHitsShell,
  endCapRubs,
  endCapsSwapped,
  spigotOffAxle,
  bearingOutOfReach,
  freehubGapOff,
  freehubRubs,
  retainingRingForgotten,
  partsLockEachOther,
  ringNotNamed,
  driverMissing,
  variantBreaksWidth,
  variantChangesNothing,
  variantPartMissing,
  flangeOutsideStack,
  holesDisagree,
  crossingImpossible,
  phaseMissing,
  spokeHoleSmall,
  lengthsSwapped,
  spokeLengthOff,
  threadsFew,
  tensionOverLimit,
  slackSideLow,
  spokesGoSlack,
  tensionsUneven,
  readingsMissing,
];
