package trimwright.wing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.FlapPanels;
import trimwright.boat.FootPlate;
import trimwright.boat.SheetTackle;
import trimwright.boat.TrimRange;
import trimwright.boat.WingSpec;
import trimwright.boat.WingStation;
import trimwright.section.SectionFamily;
import trimwright.section.ThinSection;

/** Wings for tests: textbook planforms with thin sections, and one like a real boat's. */
final class TestWings {
    static final SectionFamily THIN = ThinSection::new;

    private TestWings() {}

    static WingSpec real() {
        return spec(
                List.of(new WingStation(0, 5.2, 0.18), new WingStation(13, 4.1, 0.17), new WingStation(26, 1.8, 0.14)));
    }

    static WingSpec tapered(double span, double footChord, double headChord) {
        return spec(List.of(new WingStation(0, footChord, 0.1), new WingStation(span, headChord, 0.1)));
    }

    /** Widest at half the span; chord there such that the mean chord is 1 for span 10. */
    static WingSpec doubleTaper(double span, double taper) {
        double middle = 2 / (1 + taper);
        return spec(List.of(
                new WingStation(0, taper * middle, 0.1),
                new WingStation(span / 2, middle, 0.1),
                new WingStation(span, taper * middle, 0.1)));
    }

    /** Many short straight pieces of an ellipse of span and middle chord. */
    static WingSpec elliptic(double span, double chord) {
        int pieces = 2000;
        WingStation[] stations = new WingStation[pieces + 1];
        for (int k = 0; k <= pieces; k++) {
            double y = 1 - Math.cos(Math.PI * k / pieces);
            double c = chord * Math.sqrt(Math.max(0, y * (2 - y)));
            stations[k] = new WingStation(span / 2 * y, Math.max(c, 1e-9), 0.1);
        }
        return spec(List.of(stations));
    }

    private static WingSpec spec(List<WingStation> stations) {
        return spec(stations, FlapPanels.SINGLE, null);
    }

    static WingSpec withPanels(WingSpec wing, FlapPanels panels) {
        return spec(wing.stations(), panels, null);
    }

    static WingSpec withPlate(WingSpec wing, FootPlate plate) {
        return spec(wing.stations(), FlapPanels.SINGLE, plate);
    }

    private static WingSpec spec(List<WingStation> stations, FlapPanels panels, @Nullable FootPlate plate) {
        return new WingSpec(
                "test",
                stations,
                1.5,
                0,
                0.4,
                0.22,
                panels,
                plate,
                0.012,
                400,
                10,
                new TrimRange(0.66, 0.7, -0.3, 0.8, 0.03),
                new SheetTackle(2.5, 8, 0.9, 20000));
    }
}
