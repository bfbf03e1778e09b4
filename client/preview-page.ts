import * as vscode from 'vscode';

/** The page around the drawing. It runs one script of ours and nothing else: no inline styles, no network. */
export function previewPage(webview: vscode.Webview, extension: vscode.Uri): string {
  const media = (name: string): string =>
    webview.asWebviewUri(vscode.Uri.joinPath(extension, 'client', 'media', name)).toString();
  const nonce = crypto.randomUUID().replaceAll('-', '');
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}';">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" href="${media('preview.css')}">
<title>Section</title>
</head>
<body>
<header>
  <h1 id="title">Section</h1>
  <label id="variants" hidden>Variant <select id="variant"></select></label>
  <div role="group" aria-label="Zoom">
    <button type="button" id="smaller" title="Smaller (−)" aria-label="Smaller">−</button>
    <button type="button" id="fit" title="Fit the width (0)" aria-label="Fit the width">fit</button>
    <button type="button" id="larger" title="Larger (+)" aria-label="Larger">+</button>
  </div>
</header>
<p id="stale" role="status" hidden></p>
<figure id="drawing" tabindex="0" aria-label="Section drawing. Plus and minus zoom, zero fits, arrow keys move, Tab goes from part to part, Enter shows a part in the text."></figure>
<p id="empty" hidden></p>
<section id="found" aria-labelledby="found-title" hidden><h2 id="found-title">Findings</h2><ol id="findings"></ol></section>
<div id="more" hidden></div>
<section id="felt" aria-labelledby="felt-title" hidden><h2 id="felt-title">Play and load</h2>
<div id="conditions" role="group" aria-label="Temperature and clamp">
  <label>Temperature <input type="range" id="temperature" min="-30" max="80" step="1" value="20"></label><output id="temperature-said" for="temperature">20 °C</output>
  <label>Clamp <input type="range" id="clamp" min="0" max="15000" step="100" value="0"></label><output id="clamp-said" for="clamp"></output>
  <button type="button" id="as-written" disabled>20 °C and the written clamp</button>
</div>
<div id="pairs-part" hidden><table id="pairs" role="table" aria-labelledby="felt-title"></table></div>
<div id="builds" hidden></div>
<div id="bearings-part" hidden><h3 id="bearings-title">Fits and clearance, mean and range</h3><table id="bearings" role="table" aria-labelledby="bearings-title"></table></div>
</section>
<section id="sums" aria-labelledby="sums-title" hidden><h2 id="sums-title">Loops of dimensions, mm</h2><table id="loops" role="table"></table></section>
<section id="open" aria-labelledby="open-title" hidden><h2 id="open-title">Not checked</h2><ul id="unchecked"></ul></section>
<section id="taken" aria-labelledby="taken-title" hidden><h2 id="taken-title">Assumed to draw it</h2><ul id="assumed"></ul></section>
<details id="words" hidden><summary>The drawing in words</summary><p id="description"></p></details>
<script nonce="${nonce}" src="${media('preview.js')}"></script>
</body>
</html>`;
}
