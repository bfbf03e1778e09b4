/**
 * What client and server say to each other beyond the language server protocol: names and shapes, nothing else.
 * Places are zero-based lines and UTF-16 characters, as in the protocol itself.
 */

export interface Place {
  readonly line: number;
  readonly character: number;
}

export interface Stretch {
  readonly start: Place;
  readonly end: Place;
}

export type Gravity = 'error' | 'warning' | 'information' | 'hint';

/** What the client tells the server at the start. */
export interface ClientOptions {
  /** The client answers `readFile` and `findFiles`; otherwise the server's host reads files itself. */
  readonly files?: boolean;
  /** The client knows the command that opens the page of a finding. */
  readonly explain?: boolean;
  /** The client knows VS Code's command that opens the list of suggestions. */
  readonly suggestAgain?: boolean;
  /** The client wants `changed` notifications. */
  readonly changed?: boolean;
  /** Which files get findings: those in an editor, or every one in the workspace. */
  readonly check?: 'open' | 'workspace';
}

/** The command a client registers to open the page of a finding; its argument is the code. */
export const explainCommand = 'hubwright.explainFinding';

/** Scheme of the read-only pages a client serves: `hubwright-page:/spacer-short.md`. */
export const pageScheme = 'hubwright-page';

/** Client to server: the drawn section of one variant with everything that stands around it. */
export const sectionRequest = 'hubwright/section';

export interface SectionParams {
  readonly uri: string;
  /** Null is the hub as written; an unknown name is answered with it too. */
  readonly variant: string | null;
  /** Width of the drawing, mm, in which its letters are 3.5 mm high; that of A4 across without it. */
  readonly width?: number;
  /** Under what play and load are worked out; the bench and the written clamp without it. */
  readonly conditions?: Conditions;
}

/** Temperature of the whole hub, °C, and a clamp force in place of the written one, N. */
export interface Conditions {
  readonly temperature: number;
  readonly clampForce: number | null;
}

export interface SectionAnswer {
  readonly title: string;
  readonly variant: string | null;
  /** Every variant, the hub as written first. */
  readonly variants: readonly (string | null)[];
  /** Why the text could not be read whole; the drawing then shows less than was meant. */
  readonly broken: string | null;
  /** An SVG element without styles or scripts; null where there is nothing to draw. */
  readonly svg: string | null;
  /** The drawing in words. */
  readonly description: string;
  /** What was assumed to draw it. */
  readonly assumed: readonly string[];
  readonly loops: readonly SectionLoop[];
  /** The conditions that hold, and the clamp that the files give, N; null where none of them does. */
  readonly conditions: Conditions & { readonly writtenClamp: number | null };
  /** Play and load of each pair. */
  readonly pairs: SectionTable;
  /** Fits and clearance of each bearing. */
  readonly bearings: SectionTable;
  /** Further tables with their titles: of a wheel its spokes, tensions and readings. */
  readonly tables: readonly (SectionTable & { readonly title: string })[];
  readonly findings: readonly SectionFinding[];
  readonly unchecked: readonly SectionUnchecked[];
  /** Where the parts of the drawing stand in the text, by address. */
  readonly places: Readonly<Record<string, Stretch>>;
}

/** One row of the table of loops; numbers as they are said to people, mm. */
export interface SectionLoop {
  readonly what: string;
  readonly nominal: string;
  readonly mean: string;
  readonly worst: string;
  readonly rss: string;
  readonly wanted: string;
  readonly outside: string;
  /** What the parts as measured come to; empty where nothing was measured. */
  readonly measured: string;
  readonly verdict: string;
  /** How bad it is; null where it holds. */
  readonly gravity: Gravity | null;
  readonly range: Stretch;
}

/** A table as it is shown: a title for each column, and as many cells in each row; the first names the row. */
export interface SectionTable {
  readonly titles: readonly string[];
  readonly rows: readonly SectionRow[];
}

export interface SectionRow {
  readonly cells: readonly string[];
  readonly gravity: Gravity | null;
  readonly range: Stretch;
}

export interface SectionFinding {
  readonly code: string;
  readonly gravity: Gravity;
  readonly message: string;
  readonly range: Stretch;
}

export interface SectionUnchecked {
  readonly what: string;
  readonly missing: string;
  readonly range: Stretch;
}

/** Client to server: the service sheet of one variant. */
export const sheetRequest = 'hubwright/sheet';

export interface SheetAnswer {
  readonly title: string;
  /** The variants there are, the hub as written (null) first. */
  readonly variants: readonly (string | null)[];
  /** A page of its own, to print. */
  readonly html: string;
  /** The same words without the pictures. */
  readonly markdown: string;
}

/** Client to server: what to order for every hub and wheel of the workspace; null where there is none. */
export const orderRequest = 'hubwright/order';

export interface OrderAnswer {
  /** How many hubs and wheels the list is for. */
  readonly files: number;
  readonly markdown: string;
}

/** Client to server: thousands of builds of each pair, with the parameters of the section; asked for when the typing pauses. */
export const buildsRequest = 'hubwright/builds';

export interface BuildsAnswer {
  readonly pairs: readonly PairOfBuilds[];
}

/** How the clamped play of one pair is spread. */
export interface PairOfBuilds {
  /** The two bearings. */
  readonly what: string;
  /** A picture of the spread with the limits, an SVG element without styles or scripts. */
  readonly svg: string;
  /** The picture in words. */
  readonly words: string;
}

/** Client to server: the page that explains a finding, as markdown; null for a code there is not. */
export const explainRequest = 'hubwright/explain';

export interface ExplainParams {
  readonly code: string;
}

export interface ExplainAnswer {
  readonly markdown: string;
}

/** Client to server: the next question about a hub on the stand, or the file that its answers make. */
export const measureRequest = 'hubwright/measureHub';

export interface MeasureParams {
  /** Every answer given so far. */
  readonly answers: readonly string[];
}

/** Where the dialogue about a hub on the stand has come to: the next question, or the file. */
export type MeasureAnswer =
  | {
      readonly kind: 'question';
      readonly question: {
        readonly text: string;
        readonly hint: string;
        readonly choices: readonly string[] | null;
        readonly problem: string | null;
      };
    }
  | {
      readonly kind: 'file';
      readonly text: string;
      readonly name: string;
      readonly doubts: readonly string[];
    };

/** Client to server: the text of a new hub, with snippet stops and without. */
export const skeletonRequest = 'hubwright/skeleton';

export interface SkeletonParams {
  readonly name: string;
  readonly position: 'front' | 'rear';
}

export interface SkeletonAnswer {
  readonly snippet: string;
  readonly text: string;
}

/** Client to server: check every spec file of the workspace and show its findings. */
export const checkWorkspaceRequest = 'hubwright/checkWorkspace';

export interface CheckAnswer {
  readonly files: number;
  readonly withFindings: number;
  readonly counts: Readonly<Record<Gravity, number>>;
  /** The outcome in one sentence. */
  readonly summary: string;
}

/** Server to client: what is known of a file changed; drawings of it are to be asked for again. */
export const changedNotification = 'hubwright/changed';

export interface ChangedParams {
  readonly uri: string;
}

/** Server to client: the text of a file that is not open; null when there is none. */
export const readFileRequest = 'hubwright/readFile';

export interface ReadFileParams {
  readonly uri: string;
}

export interface ReadFileAnswer {
  readonly text: string | null;
}

/** Server to client: spec files in a folder, and below it when `deep`. */
export const findFilesRequest = 'hubwright/findFiles';

export interface FindFilesParams {
  readonly folder: string;
  readonly deep: boolean;
}

export interface FindFilesAnswer {
  readonly uris: readonly string[];
}
