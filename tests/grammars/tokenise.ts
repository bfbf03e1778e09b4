import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import oniguruma from 'vscode-oniguruma';
import textmate from 'vscode-textmate';

/** One stretch of a line: its text and the innermost scope that colours it. */
export type Token = { readonly text: string; readonly scopes: readonly string[] };

/** The YAML grammar the editor ships, and ours, by scope name. */
const require = createRequire(import.meta.url);
const yaml = (name: string) =>
  require.resolve(`@codingame/monaco-vscode-yaml-default-extension/resources/${name}.tmLanguage.json`);
const own = (name: string) => new URL(`../../grammars/${name}.tmLanguage.json`, import.meta.url);
const files: Readonly<Record<string, string | URL>> = {
  'source.yaml': yaml('yaml'),
  'source.yaml.embedded': yaml('yaml-embedded'),
  'source.yaml.1.0': yaml('yaml-1.0'),
  'source.yaml.1.1': yaml('yaml-1.1'),
  'source.yaml.1.2': yaml('yaml-1.2'),
  'source.yaml.1.3': yaml('yaml-1.3'),
  'source.hub-spec': own('hub-spec'),
  'source.wheel-spec': own('wheel-spec'),
  'source.workshop-spec': own('workshop-spec'),
  'source.hubwright-tokens': own('spec-tokens'),
};

const wasm = readFileSync(require.resolve('vscode-oniguruma/release/onig.wasm'));
const registry = new textmate.Registry({
  onigLib: oniguruma.loadWASM(wasm).then(() => ({
    createOnigScanner: (sources: string[]) => new oniguruma.OnigScanner(sources),
    createOnigString: (text: string) => new oniguruma.OnigString(text),
  })),
  loadGrammar: async (scopeName: string) => {
    const file = files[scopeName];
    return file ? textmate.parseRawGrammar(readFileSync(file, 'utf8'), 'grammar.json') : null;
  },
});

/** The tokens of every line of a text, as the editor would split it; line ends are not part of a line. */
export async function tokenise(scopeName: string, text: string): Promise<Token[][]> {
  const grammar = await registry.loadGrammar(scopeName);
  if (!grammar) throw new Error(`no grammar ${scopeName}`);
  let state = textmate.INITIAL;
  return text.split(/\r?\n/).map((line) => {
    const done = grammar.tokenizeLine(line, state);
    state = done.ruleStack;
    return done.tokens.map((t) => ({ text: line.slice(t.startIndex, t.endIndex), scopes: t.scopes }));
  });
}
