package trimwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import trimwright.course.LocalPlane;
import trimwright.course.Position;
import trimwright.store.UtcOffset;
import trimwright.text.JsonOut;

/** A page from a debrief written by hand: it stands alone, what a log says does not become markup, figures are those of the document. */
class DayReportTest {
    private static final String DEBRIEF = """
            {"schema": "debrief/1", "session": "one", "start_utc": "2027-03-06T13:00:00Z", "duration_s": 600,
             "caution": "Rules stand above.", "wing": "tall", "model": {"boat_hash": "abc"}, "course": null,
             "boats": [
              {"boat": "<b>ours</b> & \\"co\\"", "foiling_told_by": "ride_height", "caveats": ["not_separable"],
               "start": {"crossed_s": 1.25, "early": false, "distance_m": 14, "speed_kn": 24, "target_ratio": 0.8, "line_ratio": 0.5},
               "legs": [{"leg": 1, "kind": "upwind", "start_s": 60, "duration_s": 120, "tws_kn": 14.2, "tws_sd_kn": 0.5, "twd_deg": 331,
                         "twd_sd_deg": 3, "boat_speed_kn": 25, "strip": {"step_s": 2, "made_m": [0, 500], "lost_s": [0, 30]}}],
               "off_foil": [{"start_s": 170, "duration_s": 22}],
               "turns": [{"turn": 1, "kind": "tack", "label": "free", "touched_down": true, "lost_m": 90, "start_s": 100, "angle_deg": -91,
                          "entry_speed_kn": 26, "minimum_speed_kn": 12},
                         {"turn": 2, "kind": "tack", "label": "mark", "touched_down": false, "lost_m": null, "start_s": 140, "angle_deg": 90}],
               "phases": [{"kind": "upwind", "duration_s": 30, "tws_kn": 14, "course_twa_deg": -50, "camber_deg": 28, "sheet_load_n": 4000},
                          {"kind": "upwind", "duration_s": 10, "tws_kn": 15, "course_twa_deg": 54, "camber_deg": 32, "sheet_load_n": 4400}],
               "ledger": [{"total_s": 32, "lines": [
                 {"cause": "turns_free", "loss_s": 24, "least_s": 24, "most_s": 24, "pieces": []},
                 {"cause": "trim", "loss_s": 8, "least_s": 8, "most_s": 8, "pieces": []},
                 {"cause": "angle", "loss_s": 1, "least_s": 1, "most_s": 1, "pieces": []},
                 {"cause": "unjudged", "loss_s": -1, "least_s": -1, "most_s": -1, "pieces": []}]}],
               "quality": {"channels": [
                 {"channel": "a", "coverage_ratio": 0.5, "gaps": 1, "longest_gap_s": 9, "frozen": 0, "jump": 0, "out_of_range": 0},
                 {"channel": "b", "coverage_ratio": 0.5, "gaps": 1, "longest_gap_s": 9, "frozen": 0, "jump": 0, "out_of_range": 0}]}},
              {"boat": "theirs", "foiling_told_by": null, "quality": {"channels": []}}],
             "fleet": {"findings": [], "nothing": "no difference that this data can show"}}
            """;

    private static DayReport report(String document) {
        return new DayReport(
                JsonOut.read(document),
                new UtcOffset(0, UtcOffset.From.LONGITUDE),
                Map.of("theirs", new double[][] {{0, 100}, {0, 200}}),
                new LocalPlane(new Position(0.5, -0.7)),
                null,
                null);
    }

    private static Element parsed(String page) throws Exception {
        assertTrue(page.startsWith("<!DOCTYPE html>\n"));
        String markup = page.substring(page.indexOf('\n') + 1);
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(markup)))
                .getDocumentElement();
    }

    private static List<String> cells(Element page) {
        List<String> cells = new ArrayList<>();
        NodeList all = page.getElementsByTagName("td");
        for (int i = 0; i < all.getLength(); i++) {
            cells.add(all.item(i).getTextContent());
        }
        return cells;
    }

    @Test
    void standsAloneAndRunsNothing() throws Exception {
        String html = report(DEBRIEF).html();
        Element page = parsed(html);
        assertEquals(0, page.getElementsByTagName("script").getLength());
        assertEquals(0, page.getElementsByTagName("link").getLength());
        assertEquals(0, page.getElementsByTagName("b").getLength());
        assertFalse(html.contains("src="));
        assertFalse(html.replace("http://www.w3.org/2000/svg", "").contains("http"));
        assertTrue(html.contains("Rules stand above."));
        assertTrue(cells(page).contains("<b>ours</b> & \"co\""));
    }

    @Test
    void figuresAreThoseOfTheDocument() throws Exception {
        List<String> cells = cells(parsed(report(DEBRIEF).html()));
        // 24 + 8 + 1; what is not judged does not count.
        assertTrue(cells.contains("33"), cells::toString);
        // 12 of the leg's 120 s off the foils: the spell's first ten seconds lie on it.
        assertTrue(cells.contains("92"), cells::toString);
        // Weighed by their length: (30 x 28 + 10 x 32) / 40.
        assertTrue(cells.contains("29"), cells::toString);
        assertTrue(cells.contains("51"), cells::toString);
        assertTrue(cells.contains("4.1"), cells::toString);
        // One second is under two seconds a leg, eight is not.
        assertTrue(cells.contains("free turns 24.0 s (\u00b13.5); trim 8.0 s (\u00b12.0)"), cells::toString);
        assertTrue(cells.stream().anyMatch(cell -> cell.startsWith("angle")), cells::toString);
        assertTrue(cells.contains("a, b"), cells::toString);
    }

    @Test
    void barsAreAsLongAsWhatWasLost() throws Exception {
        NodeList all = parsed(report(DEBRIEF).html()).getElementsByTagName("rect");
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < all.getLength(); i++) {
            Element rect = (Element) all.item(i);
            if (rect.getAttribute("height").equals("24")) {
                widths.add(Double.parseDouble(rect.getAttribute("width")));
            }
        }
        widths.removeIf(width -> width == 0);
        assertEquals(3, widths.size());
        assertEquals(24, widths.get(0) / widths.get(2), 0.1);
        assertEquals(8, widths.get(1) / widths.get(2), 0.1);
    }

    @Test
    void aDayWithNothingInItSaysSo() throws Exception {
        String none = """
                {"schema": "debrief/1", "session": "one", "start_utc": "2027-03-06T13:00:00Z", "duration_s": 60, "caution": "c",
                 "boats": [{"boat": "alone", "quality": {"channels": []}}], "fleet": null}
                """;
        String text = parsed(report(none).html()).getTextContent();
        assertTrue(text.contains("No legs were found."));
        assertTrue(text.contains("Nothing was judged"));
        assertTrue(text.contains("No turns were found."));
        assertTrue(text.contains("No steady phases were found."));
    }
}
