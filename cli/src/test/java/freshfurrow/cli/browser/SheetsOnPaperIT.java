package freshfurrow.cli.browser;

import static org.assertj.core.api.Assertions.assertThat;

import freshfurrow.cli.command.Freshfurrow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Crew sheets as a browser prints them: each machine and day on pages of its own, nothing cut off. */
@InBrowser
final class SheetsOnPaperIT {
    private static final Pattern HEADING =
            Pattern.compile("(Rig|Planter|Sprayer) \\S+ +\\w+day(, \\w+ \\d+,| \\d+ \\w+) \\d{4}");
    private static final double LEAST_MARGIN_PT = 10 / 25.4 * 72;
    private static final double HEADING_PT = 26;

    /** Readable in a cab (common practice, no source). */
    private static final double STEP_PT = 11;

    private static final Pattern STEP = Pattern.compile(
            "(?<!;\\s{1,3})\\b(?:(?:to )?(?:\\d?\\d:\\d\\d(?: [ap]m)?|noon|midnight)|before|all day) +"
                    + "(Batch|Transfer|Drive|Draw|Dump|Clean|Fill|Plant|Spray|Get ready to spray|Wait|Break|Done for the day|Parked|In the tank|Set up|Close up|Flush|Load)\\b");
    private static final int LEAST_STEPS = 2;

    /** The boom of the mixed farm, mounted on a rig there, on a vehicle of its own. */
    private static final String SERVED =
            "{\"sprayers\": {\"boom\": {\"on\": null, \"tank\": \"300 gal\", \"roadSpeed\": \"12 mph\", \"at\": \"yard\"}}}";

    @ParameterizedTest
    @CsvSource({"first-season, A4", "metric, letter", "spring, A4", "cooperative, letter", "mixed-farm, A4"})
    void eachMachineAndDayHasPagesOfItsOwnAndNothingIsCutOff(
            String scenario, String paper, Browser browser, @TempDir Path folder) throws Exception {
        Pages.ofScenario(scenario, folder);

        assertWholeOnPaper(folder, paper, browser);
    }

    @Test
    void soHaveSprayersThatAreServedAndDaysWithoutExtract(Browser browser, @TempDir Path folder) throws Exception {
        Pages.ofScenario("mixed-farm", SERVED, folder);

        assertThat(assertWholeOnPaper(folder, "letter", browser))
                .contains("Sprayer boom ", " Spray ", "Plant without extract");
    }

    private static String assertWholeOnPaper(Path folder, String paper, Browser browser) throws IOException {
        Path html = folder.resolve("sheets.html");
        assertThat(Freshfurrow.run("sheets", folder.toString())).isZero();
        String sheets = Files.readString(html);
        Files.writeString(html, sheets.replace("</style>", "@page { size: " + paper + " }</style>"));

        try (PDDocument pdf = Loader.loadPDF(browser.printed(html))) {
            List<String> headings = new ArrayList<>();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                PageText text = new PageText(pdf, page);
                List<String> onPage = HEADING.matcher(text.all())
                        .results()
                        .map(MatchResult::group)
                        .toList();
                assertThat(onPage)
                        .as("heading of page %d: %s", page, text.all())
                        .hasSize(1);
                boolean continued = headings.containsAll(onPage);
                headings.addAll(onPage);
                assertThat(text.all()).contains("page " + page + " of " + pdf.getNumberOfPages());
                text.assertWithin(pdf.getPage(page - 1).getMediaBox());
                assertThat(STEP.matcher(text.all()).results().count())
                        .as("steps on page %d, not the cautions alone", page)
                        .isGreaterThanOrEqualTo(continued ? LEAST_STEPS : 1);
            }
            Set<String> parted = new LinkedHashSet<>(headings);
            assertThat(parted).hasSize(sheets.split("<section ", -1).length - 1);
            assertThat(headings).as("pages of a sheet follow one another").isEqualTo(together(headings, parted));
            for (String heading : parted) {
                assertThat(Collections.frequency(headings, heading))
                        .as("pages of %s", heading)
                        .isLessThanOrEqualTo(heading.startsWith("Rig") ? 2 : 1);
            }
            long steps = occurrences(sheets, "<tr class=\"(main|minor)\">");
            String text = wholeText(pdf);
            assertThat(occurrences(text, STEP.pattern())).isEqualTo(steps);
            return text;
        }
    }

    private static List<String> together(List<String> headings, Set<String> parted) {
        return parted.stream()
                .flatMap(heading -> headings.stream().filter(heading::equals))
                .toList();
    }

    private static long occurrences(String text, String pattern) {
        return Pattern.compile(pattern).matcher(text).results().count();
    }

    private static String wholeText(PDDocument pdf) throws IOException {
        PDFTextStripper text = new PDFTextStripper();
        text.setSortByPosition(true);
        return text.getText(pdf);
    }

    /** The text of a page and the room that it takes. */
    private static final class PageText extends PDFTextStripper {
        private final String all;
        private double left = Double.MAX_VALUE;
        private double right;
        private double top = Double.MAX_VALUE;
        private double bottom;
        private double largest;
        private double smallestOfSteps = Double.MAX_VALUE;

        PageText(PDDocument pdf, int page) throws IOException {
            setSortByPosition(true);
            setStartPage(page);
            setEndPage(page);
            all = getText(pdf);
        }

        String all() {
            return all;
        }

        void assertWithin(PDRectangle paper) {
            assertThat(left).isGreaterThan(LEAST_MARGIN_PT);
            assertThat(right).isLessThan(paper.getWidth() - LEAST_MARGIN_PT);
            assertThat(top).isGreaterThan(LEAST_MARGIN_PT);
            assertThat(bottom).isLessThan(paper.getHeight() - LEAST_MARGIN_PT / 2);
            assertThat(largest).as("not shrunk to fit").isGreaterThan(HEADING_PT - 0.5);
            assertThat(smallestOfSteps).as("type of steps, pt").isGreaterThan(STEP_PT - 0.1);
        }

        @Override
        protected void writeString(String text, List<TextPosition> positions) throws IOException {
            if (STEP.matcher(text).find()) {
                positions.forEach(letter -> smallestOfSteps = Math.min(smallestOfSteps, letter.getYScale()));
            }
            super.writeString(text, positions);
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            super.processTextPosition(text);
            if (!text.getUnicode().isBlank()) {
                left = Math.min(left, text.getXDirAdj());
                right = Math.max(right, text.getXDirAdj() + text.getWidthDirAdj());
                top = Math.min(top, text.getYDirAdj() - text.getHeightDir());
                bottom = Math.max(bottom, text.getYDirAdj());
                largest = Math.max(largest, text.getYScale());
            }
        }
    }
}
