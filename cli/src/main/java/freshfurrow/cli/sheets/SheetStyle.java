package freshfurrow.cli.sheets;

/** How sheets look, on paper above all. */
final class SheetStyle {
    /** No page size: the printer's paper is taken, A4 or US Letter, and the sheets run to its width. */
    static final String CSS = """
            @page { margin: 11mm 12mm 14mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 10pt sans-serif; } }
            * { box-sizing: border-box; margin: 0; padding: 0; }
            body { font: 12.5pt/1.25 "Liberation Sans", Arial, Helvetica, sans-serif; color: #000; background: #fff; overflow-wrap: anywhere; }
            .sheet { break-before: page; }
            .sheet:first-child { break-before: auto; }
            tr { break-inside: avoid; }
            .rule { display: inline-block; height: 1.2em; width: 18mm; border-bottom: 0.3mm solid #000; }

            table { width: 100%; border-collapse: collapse; table-layout: fixed; }
            thead { display: table-header-group; }
            col.when { width: 42mm; }
            col.time { width: 20mm; }
            col.amount { width: 40mm; }
            th { text-align: left; font-weight: normal; }
            .head th { padding-bottom: 1.5mm; border-bottom: 1mm solid #000; }
            .head div { display: flex; justify-content: space-between; align-items: baseline; gap: 6mm; }
            .head h1 { font-size: 26pt; line-height: 1.15; }
            .head .day { font-size: 20pt; font-weight: bold; white-space: nowrap; }
            .head .rule { width: 60mm; }
            .columns th { font-size: 10pt; padding: 0.8mm 0; border-bottom: 0.4mm solid #000; }

            td { vertical-align: top; padding: 1.5mm 2mm 1.3mm 0; border-bottom: 0.2mm solid #777; }
            .box { float: left; width: 5.5mm; height: 5.5mm; border: 0.5mm solid #000; }
            .when { margin-left: 8mm; }
            .use-by { display: inline-block; margin-top: 0.8mm; padding: 0 1.2mm; border: 0.5mm solid #000; font-weight: bold; }
            .main .what { font-weight: bold; }
            .main .what b { font-size: 14.5pt; text-transform: uppercase; }
            .over-limit td { padding: 2mm; border: 1mm solid #000; font-weight: bold; font-size: 14pt; }
            .true { text-align: right; white-space: nowrap; font-size: 11pt; }
            .true p + p { margin-top: 1.5mm; }

            .last td { padding: 3mm 0 0; border: 0; }
            .care { padding: 1.5mm 3mm; border: 0.5mm solid #000; font-size: 10pt; line-height: 1.2; }
            .care h2 { font-size: 11pt; }
            .care ul { padding-left: 5mm; }
            .notes { margin-top: 4mm; display: flex; gap: 2mm; }
            .notes .rule { flex: 1; }
            @media screen { .sheet { max-width: 190mm; margin: 0 auto 12mm; padding: 4mm; } }
            """;

    private SheetStyle() {}
}
