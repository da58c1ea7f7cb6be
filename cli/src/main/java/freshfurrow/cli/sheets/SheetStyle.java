package freshfurrow.cli.sheets;

/** How sheets look, on paper above all. */
final class SheetStyle {
    /**
     * No page size: the printer's paper is taken, A4 or US Letter, and the sheets run to its width. Steps are in 11 pt, a line
     * each where they can be, so that a busy day is one page.
     */
    static final String CSS = """
            @page { margin: 10mm 11mm 13mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 9pt sans-serif; } }
            * { box-sizing: border-box; margin: 0; padding: 0; }
            body { font: 11pt/1.12 "Liberation Sans", Arial, Helvetica, "DejaVu Sans Condensed", sans-serif; color: #000; background: #fff; overflow-wrap: anywhere; }
            .sheet { break-before: page; }
            .sheet:first-child { break-before: auto; }
            tr { break-inside: avoid; }
            .rule { display: inline-block; height: 0.8em; width: 10mm; border-bottom: 0.3mm solid #000; }

            table { width: 100%; border-collapse: collapse; table-layout: fixed; }
            thead { display: table-header-group; }
            col.when { width: calc(6.9mm + 7.6ch); }
            col.use-by { width: 19.5mm; }
            col.time { width: 15.5mm; }
            .rig col.amount { width: 36mm; }
            .planter col.amount { width: 19mm; }
            th { text-align: left; font-weight: normal; }
            .head th { padding-bottom: 0.8mm; border-bottom: 0.8mm solid #000; }
            .head div { display: flex; justify-content: space-between; align-items: baseline; gap: 6mm; }
            .head h1 { font-size: 26pt; line-height: 1.05; }
            .head .day { font-size: 20pt; font-weight: bold; white-space: nowrap; }
            .head .rule { width: 60mm; }
            .columns th { font-size: 9.5pt; line-height: 1; padding: 0.6mm 0; border-bottom: 0.4mm solid #000; vertical-align: bottom; }

            td { vertical-align: top; padding: 0.2mm 1mm 0.1mm 0; border-bottom: 0.2mm solid #777; }
            .planter td { padding: 0.75mm 1mm 0.5mm 0; }
            .box { display: inline-block; width: 3.8mm; height: 3.8mm; border: 0.4mm solid #000; vertical-align: -0.5mm; }
            .when .box { margin-right: 1.4mm; }
            .when, .true, .use-by { white-space: nowrap; }
            span.use-by { padding: 0 0.6mm; outline: 0.3mm solid #000; outline-offset: -0.1mm; font-weight: bold; white-space: normal; }
            .over-limit td { padding: 1.5mm 2mm; border: 1mm solid #000; font-weight: bold; font-size: 14pt; }
            .order td { padding: 1.2mm 2mm; border: 0.6mm solid #000; }
            .loading td { padding: 1mm 0; border-bottom: 0.4mm solid #000; }
            .loading h2 { font-size: inherit; float: left; width: calc(6.9mm + 7.6ch); }
            .loading dl { overflow: hidden; }
            .loading dt, .loading dd { display: inline; }
            .loading dt { font-weight: bold; }
            .true span + span { margin-left: 1mm; }

            .last, tr:nth-last-child(2), tr:nth-last-child(3) { break-before: avoid; }
            .sheet .last td { padding: 1.5mm 0 0; border: 0; white-space: normal; }
            .care { padding: 0.6mm 2mm; border: 0.5mm solid #000; font-size: 9pt; line-height: 1.1; }
            .care h2, .care ul, .care li { display: inline; font-size: inherit; }
            .care li::before { content: " \\25AA\\A0"; }
            .notes { margin-top: 3mm; display: flex; gap: 2mm; }
            .notes .rule { flex: 1; }
            @media screen { .sheet { max-width: 192mm; margin: 0 auto 12mm; padding: 4mm; } }
            """;

    private SheetStyle() {}
}
