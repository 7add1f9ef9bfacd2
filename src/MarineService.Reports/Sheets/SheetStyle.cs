using MarineService.Reports.Internal;

namespace MarineService.Reports.Sheets;

/// <summary>How sheets look: for paper first, in colours that stay apart in grey, with nothing that has to be loaded.</summary>
internal static class SheetStyle
{
    internal static string For(Paper paper) => $"@page {{ {Size(paper)}margin: 13mm 14mm 15mm; }}\n{Common}";

    private static string Size(Paper paper) => paper switch
    {
        Paper.A4 => "size: A4; ",
        Paper.Letter => "size: letter; ",
        _ => "",
    };

    // Numbers of pages are the browser's to count. A row that does not fit goes to the next page whole; the header row goes with it.
    private const string Common = $$"""
        @page { @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 8pt Arial, "Liberation Sans", sans-serif; color: {{Palette.Quiet}}; } }
        * { box-sizing: border-box; }
        html { color: {{Palette.Ink}}; background: {{Palette.Paper}}; font: 9.5pt/1.32 "Segoe UI", Roboto, "Helvetica Neue", Arial, "Liberation Sans", sans-serif; -webkit-print-color-adjust: exact; print-color-adjust: exact; }
        body { margin: 0 auto; max-width: 190mm; padding: 4mm; overflow-wrap: break-word; }
        bdi { overflow-wrap: anywhere; }
        header { border-bottom: 2.5pt solid {{Palette.Ink}}; padding-bottom: 2mm; margin-bottom: 3mm; }
        .kind { margin: 0; font-weight: 700; letter-spacing: .12em; text-transform: uppercase; font-size: 9pt; color: {{Palette.Quiet}}; }
        h1 { margin: 0; font-size: 22pt; line-height: 1.15; }
        .detail { margin: 0; color: {{Palette.Quiet}}; }
        .opening { margin: 1.5mm 0 0; }
        .date { white-space: nowrap; }
        .log td:nth-child(3) { width: 38mm; }
        .log td:nth-child(5) { width: 28mm; }
        .log td:nth-child(6) { width: 40mm; }
        .items th:first-child { width: 44mm; }
        section { margin: 0 0 4mm; }
        h2 { margin: 0 0 1.5mm; font-size: 12.5pt; line-height: 1.2; break-after: avoid; }
        h3 { margin: 2mm 0 1mm; font-size: 10pt; break-after: avoid; }
        p { margin: 0 0 .5mm; orphans: 3; widows: 3; }
        ul, ol { margin: 0; padding-left: 5mm; }
        li { break-inside: avoid; }
        h2 + p { break-after: avoid; }
        table + p, .columns + p { margin-top: 1mm; }
        table { width: 100%; border-collapse: collapse; border-bottom: 1pt solid {{Palette.Ink}}; }
        thead { display: table-header-group; break-inside: avoid; }
        tr { break-inside: avoid; }
        thead th { text-align: left; font-size: 8.5pt; background: {{Palette.Tint}}; border-top: 1pt solid {{Palette.Ink}}; border-bottom: 1pt solid {{Palette.Ink}}; padding: 1mm 1.5mm; }
        tbody th, td { text-align: left; vertical-align: top; padding: .9mm 1.5mm; border-top: .5pt solid {{Palette.Quiet}}; }
        tbody th { font-weight: 600; }
        dl { margin: 0; }
        dt { font-size: 8.5pt; color: {{Palette.Quiet}}; }
        dd { margin: 0; }
        .facts { display: grid; grid-template-columns: repeat(auto-fill, minmax(55mm, 1fr)); gap: 1mm 6mm; }
        .facts div, .why div { break-inside: avoid; }
        .why { font-size: 8.5pt; line-height: 1.25; }
        .why div { display: flex; gap: 2mm; }
        .why dt { flex: 0 0 18mm; }
        .quiet { font-weight: 400; color: {{Palette.Quiet}}; font-size: 8.5pt; }
        .state { font-weight: 700; white-space: nowrap; }
        .state-bad { color: {{Palette.Red}}; }
        .state-near { color: {{Palette.Amber}}; }
        .state-good { color: {{Palette.Green}}; }
        .state-bad::before { content: "\25A0\00A0"; }
        .state-near::before { content: "\25B2\00A0"; }
        .state-good::before { content: "\2713\00A0"; }
        .box { border: 1.5pt solid {{Palette.Ink}}; padding: 2mm 3mm; break-inside: avoid; }
        ul.box { padding-left: 8mm; }
        .unknown b { color: {{Palette.Red}}; }
        .columns { columns: 3 48mm; column-gap: 6mm; }
        .columns p { break-inside: avoid; margin-bottom: 1.2mm; }
        .tick { display: inline-flex; gap: 1.5mm; align-items: baseline; }
        .tick input { appearance: none; -webkit-appearance: none; flex: none; width: 4.2mm; height: 4.2mm; margin: -1.3mm 0 0; position: relative; top: .7mm; border: 1.2pt solid {{Palette.Ink}}; background: {{Palette.Paper}}; }
        .tick input:checked::after { content: "\2713"; display: block; font: 700 11pt/3.6mm sans-serif; text-align: center; color: {{Palette.Ink}}; }
        .field { display: inline-flex; flex-wrap: wrap; align-items: baseline; gap: 1mm; margin: 0 2mm 0 0; max-width: 100%; }
        .field-label { font-size: 8.5pt; color: {{Palette.Quiet}}; }
        .write, .write-short, .write-long { display: inline-block; border-bottom: .8pt solid {{Palette.Ink}}; height: 5.5mm; width: 30mm; }
        .write-short { width: 11mm; }
        .write-long { width: 60mm; }
        .steps .step-number, .steps th:first-child { width: 13mm; white-space: nowrap; }
        .steps td:last-child { width: 66mm; }
        .tasks th:first-child { width: 44mm; }
        .findings th { white-space: nowrap; }
        .proof th:first-child, .waste th:first-child { width: 40mm; }
        .proof td:nth-child(2) { width: 52mm; }
        .tasks td:nth-child(2) { width: 24mm; }
        .mark { font-size: 8pt; font-weight: 400; color: {{Palette.Quiet}}; white-space: nowrap; }
        .do { font-weight: 600; }
        .only { font-weight: 700; }
        .caution { display: flex; gap: 2mm; border: 1pt solid {{Palette.Ink}}; padding: .6mm 1mm; margin-bottom: .8mm; font-size: 9pt; line-height: 1.25; break-inside: avoid; }
        .signal { flex: none; align-self: flex-start; font-weight: 800; font-size: 8pt; letter-spacing: .04em; padding: 0 1mm; border: 1.2pt solid {{Palette.Ink}}; }
        .danger { border-width: 2.2pt; }
        .danger .signal { background: {{Palette.Red}}; border-color: {{Palette.Red}}; color: {{Palette.Paper}}; text-decoration: underline; }
        .warning { border-width: 1.6pt; }
        .warning .signal { background: {{Palette.Ink}}; color: {{Palette.Paper}}; }
        .caution-word .signal { border-color: {{Palette.Amber}}; color: {{Palette.Amber}}; }
        .notice { border-style: dashed; border-color: {{Palette.Blue}}; }
        .notice .signal { border-style: dashed; border-color: {{Palette.Blue}}; color: {{Palette.Blue}}; font-style: italic; }
        .hold { border-left: 3pt solid {{Palette.Ink}}; padding-left: 1.5mm; margin-bottom: 1mm; }
        .hold b { letter-spacing: .06em; }
        figure { margin: 0 0 3mm; break-inside: avoid; }
        figure svg { display: block; width: 100%; max-height: 222mm; font-family: inherit; }
        figcaption { font-size: 9pt; color: {{Palette.Quiet}}; }
        .done-with { text-decoration: line-through; }
        .signatures { display: grid; grid-template-columns: 1fr 1fr; gap: 3mm 8mm; break-inside: avoid; }
        .signatures .write-long { width: 55mm; height: 9mm; }
        footer { border-top: 1pt solid {{Palette.Ink}}; padding-top: 2mm; font-size: 9pt; break-inside: avoid; }
        @media print {
          body { max-width: none; padding: 0; }
          .said-above { display: none; }
        }
        @media screen and (max-width: 600px) {
          html { font-size: 12pt; }
          dt, .quiet, .why, .caution, .field-label, .mark, .signal, figcaption { font-size: 10.5pt; }
          thead { display: none; }
          table, tbody, tr, tbody th, td { display: block; width: auto !important; border: 0; padding: .5mm 0; }
          tr { border-top: .8pt solid {{Palette.Ink}}; padding: 1.5mm 0; }
          .why dt { flex-basis: 23mm; }
          td:empty { display: none; }
          .log td::before, .amounts td::before, .parts td::before, .loose td::before, .proof td::before, .waste td::before { content: attr(data-label) ": "; font-size: 10.5pt; color: {{Palette.Quiet}}; }
          .columns { columns: 1; }
          .signatures { grid-template-columns: 1fr; }
        }

        """;
}
