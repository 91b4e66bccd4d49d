package trimwright.segment;

import java.util.List;
import trimwright.wind.WindTrack;

/** Cuts a track into legs, turns, phases and spells off the foils, by one set of rules for every boat and day. */
public final class Cutting {
    private Cutting() {}

    public static Pieces of(WindTrack track, FoilingRule foiling) {
        Courses courses = Courses.of(track);
        List<Turn> turns = TurnFinder.find(track, courses);
        List<Leg> legs = LegFinder.find(track, courses);
        List<Phase> phases = PhaseFinder.find(track, courses, legs, turns);
        return new Pieces(legs, turns, phases, OffFoilFinder.find(track, foiling));
    }
}
