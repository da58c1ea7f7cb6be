package freshfurrow.cli.sheets;

/** How sheets look, on paper above all. */
final class SheetStyle {
    /** No page size: the printer's paper is taken, A4 or US Letter, and the sheets run to its width. */
    static final String CSS = """
            @page { margin: 11mm 12mm 14mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 10pt sans-serif; } }
            * { box-sizing: border-box; }
            body { margin: 0; font: 13pt/1.25 "Liberation Sans", Arial, Helvetica, sans-serif; color: #000; background: #fff; overflow-wrap: anywhere; }
            p, h1, h2, ul { margin: 0; padding: 0; }
            .sheet { break-before: page; }
            .sheet:first-child { break-before: auto; }
            table { width: 100%; border-collapse: collapse; table-layout: fixed; }
            thead { display: table-header-group; }
            tr, .care, .notes { break-inside: avoid; }
            th { text-align: left; font-weight: normal; }
            .head th { padding-bottom: 2mm; border-bottom: 1mm solid #000; }
            .head h1 { display: inline-block; font-size: 26pt; line-height: 1.1; margin-right: 6mm; }
            .head .day { display: inline-block; font-size: 20pt; font-weight: bold; }
            .head .season { float: left; }
            .head .crew { text-align: right; }
            .crew .rule { width: 55mm; }
            .columns th { font-size: 10pt; padding: 1mm 2mm 1mm 0; border-bottom: 0.4mm solid #000; }
            .columns th:nth-child(1) { width: 33mm; }
            .columns th:nth-child(3) { width: 22mm; }
            .columns th:nth-child(4) { width: 38mm; }
            td { vertical-align: top; padding: 1.4mm 2mm 1.4mm 0; border-bottom: 0.2mm solid #777; }
            .when { white-space: nowrap; font-variant-numeric: tabular-nums; }
            .box { display: inline-block; width: 5.5mm; height: 5.5mm; margin-right: 2.5mm; border: 0.5mm solid #000; vertical-align: -1mm; }
            .main b { font-size: 15pt; text-transform: uppercase; }
            .main .step p:first-child { font-weight: bold; }
            .minor { font-size: 12pt; }
            .use-by { display: inline-block; margin-top: 0.6mm; padding: 0 1.5mm; border: 0.5mm solid #000; font-weight: bold; }
            .true { font-size: 11pt; white-space: nowrap; }
            .true p + p { margin-top: 1.5mm; }
            .rule { display: inline-block; height: 1.2em; width: 18mm; border-bottom: 0.3mm solid #000; }
            .care { margin-top: 4mm; padding: 2mm 3mm; border: 0.5mm solid #000; font-size: 10.5pt; }
            .care h2 { font-size: 12pt; }
            .care ul { padding-left: 5mm; }
            .over-limit { font-weight: bold; font-size: 13pt; }
            .notes { margin-top: 4mm; }
            .notes .rule { width: calc(100% - 20mm); }
            @media screen { .sheet { max-width: 190mm; margin: 0 auto 12mm; padding: 4mm; } }
            """;

    private SheetStyle() {}
}
