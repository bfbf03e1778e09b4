import type { BesideKind } from '../beside-model.ts';
import type { StackKind } from '../model.ts';

/** A kind of mapping in a spec file; a `…s` section maps names to sections of one kind. */
export type SectionId =
  | 'hub'
  | `part:${StackKind}`
  | `beside:${BesideKind}`
  | 'stack'
  | 'beside'
  | 'housing:shell'
  | 'housing:freehub'
  | 'seats'
  | 'seat'
  | 'retaining-ring'
  | 'seat-sleeve'
  | 'flanges'
  | 'flange'
  | 'cups'
  | 'cup'
  | 'axle'
  | 'clamp'
  | 'duty'
  | 'variants'
  | 'variant'
  | 'change'
  | 'replace'
  | 'add'
  | 'added'
  | 'remove'
  | 'workshop'
  | 'workshop:limits'
  | 'workshop:bearings'
  | 'workshop:bearing'
  | 'workshop:materials'
  | 'workshop:material'
  | 'workshop:stock'
  | 'workshop:stock-bearings'
  | 'workshop:stock-spokes'
  | 'workshop:drivers'
  | 'workshop:driver'
  | 'workshop:defaults'
  | 'wheel'
  | 'wheel:rim'
  | 'wheel:lacing'
  | 'wheel:lacing-side'
  | 'wheel:spokes'
  | 'wheel:spoke-side'
  | 'wheel:nipples'
  | 'wheel:tension'
  | 'wheel:measured'
  | 'wheel:tyre'
  | 'wheel:rider';

export type ValueType =
  | 'length'
  | 'bore'
  | 'shaft'
  | 'offset'
  | 'force'
  | 'torque'
  | 'mass'
  | 'stress'
  | 'rate'
  | 'pressure'
  | 'stiffness'
  | 'temperature'
  | 'number'
  | 'count'
  | 'choice'
  | 'text'
  | 'name'
  | 'code'
  | 'size'
  | 'seat'
  | 'address'
  | 'material'
  | 'thread'
  | 'balls'
  | 'groove'
  | 'place'
  | 'file'
  | 'numbers'
  | 'profile'
  | 'section'
  | 'list';

/** What is known of a key, for hover and completion. */
export interface KeyInfo {
  readonly key: string;
  readonly title: string;
  readonly description: string;
  readonly type: ValueType;
  readonly required: boolean;
  readonly choices: readonly string[] | null;
  readonly examples: readonly string[];
  /** The section its value opens. */
  readonly section: SectionId | null;
}
