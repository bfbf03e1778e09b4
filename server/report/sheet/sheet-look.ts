/**
 * Looks of a printed sheet: black on white, A4 upright, the order of work in letters that are read at arm's length
 * (heads of 11 points), lists in two columns, no step torn in two.
 */
export const sheetLook = [
  '@page{size:A4;margin:8mm 10mm}',
  '*{box-sizing:border-box}',
  'body{margin:0 auto;max-width:190mm;color:#000;background:#fff;font:8.4pt/1.17 "Liberation Sans",Arial,Helvetica,"DejaVu Sans Condensed",sans-serif}',
  'h1{font-size:15pt;margin:0;white-space:nowrap}',
  'h2{font-size:9.5pt;margin:1.6mm 0 .6mm;border-bottom:.4mm solid #000;break-after:avoid}',
  'header{display:flex;align-items:baseline;justify-content:space-between;gap:5mm;border-bottom:.7mm solid #000;padding-bottom:.8mm}',
  'dl{display:flex;flex-wrap:wrap;gap:0 4mm;margin:0}dl div{display:flex;gap:1.2mm}dt{color:#333}dd{margin:0;font-weight:bold}',
  '.blank{display:inline-block;min-width:18mm;border-bottom:.25mm solid #000}',
  '.cautions{border:.5mm solid #000;padding:.8mm 2mm;margin:1.2mm 0;font-size:8pt}',
  '.cautions ul{margin:0;padding-left:4mm;columns:2;column-gap:6mm}',
  'figure{margin:0}.section svg{display:block;width:100%;}',
  '.work{display:grid;grid-template-columns:1fr 1fr;gap:0 6mm}.top{display:grid;grid-template-columns:104mm 1fr;gap:0 4mm;font-size:7.8pt;break-inside:avoid}.also{font-size:8.6pt;font-weight:normal}',
  'table{border-collapse:collapse;width:100%}td,th{text-align:left;vertical-align:top;padding:.25mm 1.2mm .25mm 0;border-bottom:.15mm solid #777;font-weight:normal}th{font-weight:bold}td.size{white-space:nowrap}td.number{font-weight:bold;width:5mm}td.blank{display:table-cell;min-width:11mm}.care th{width:46%}',
  'ul{margin:0;padding-left:3.5mm}li{break-inside:avoid}',
  '.steps ol{list-style:none;margin:0;padding:0}.steps ol>li{margin:0 0 .9mm;display:flow-root}',
  'h3{font-size:11pt;line-height:1.1;margin:0 0 .2mm;padding-left:6mm;text-indent:-6mm;break-after:avoid}',
  '.number{display:inline-block;width:6mm;text-indent:0}',
  '.steps ul{padding-left:9.5mm}.steps figure{float:right;width:38mm;margin:.5mm 0 .5mm 2mm;border:.15mm solid #777}.steps figure svg{display:block;width:100%}',
  '.care{columns:3;column-gap:5mm;font-size:7.5pt}.care section{break-inside:avoid-column}.care h2{font-size:8.5pt;margin-top:.8mm}',
  '.key{margin:1mm 0 0;font-size:8pt}',
  '.small{font-size:8pt}.locked{border:.7mm solid #000;padding:1mm 2mm;font-weight:bold}',
  '.foot{margin:1.5mm 0 0;font-size:7.5pt;border-top:.25mm solid #000}',
  '.hw-drawing{color:#000}.hw-badge circle{fill:#fff}.hw-badge text{font-weight:bold}.hw-hatch{stroke:#444}.hw-assumed{stroke:#333}.hw-strong{font-weight:bold}',
].join('');
