package trimwright.segment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.course.CourseLeg;
import trimwright.units.Angles;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Cuts a track into legs, turns, phases and spells off the foils, by one set of rules for every boat and day. */
public final class Cutting {
    private Cutting() {}

    /** Without a course: legs are spans of one point of sail. */
    public static Pieces of(WindTrack track, FoilingRule foiling) {
        return of(track, foiling, null);
    }

    /** @param on the boat on its course, or null without one */
    public static Pieces of(WindTrack track, FoilingRule foiling, @Nullable OnCourse on) {
        Courses courses = Courses.of(track);
        List<Turn> turns = TurnFinder.find(track, courses);
        if (on != null) {
            TurnLabels labels = new TurnLabels(track, on);
            turns = turns.stream().map(labels::label).toList();
        }
        List<Leg> legs = on == null ? LegFinder.find(track, courses) : legs(track, on.sailed());
        List<Phase> phases = PhaseFinder.find(track, courses, legs, turns, on);
        return new Pieces(legs, turns, phases, OffFoilFinder.find(track, foiling));
    }

    private static List<Leg> legs(WindTrack track, SailedCourse sailed) {
        List<Leg> legs = new ArrayList<>();
        for (SailedCourse.SailedLeg leg : sailed.legs()) {
            CourseLeg on = leg.leg();
            double wind = track.mean(Quantity.TWD, leg.span().from(), leg.span().to());
            double toMark = Angles.difference(wind, on.bearing());
            PointOfSail kind = Double.isNaN(toMark) ? PointOfSail.REACHING : PointOfSail.of(toMark);
            legs.add(new Leg(kind, leg.span(), Angles.compass(on.bearing()), on.length(), on));
        }
        return legs;
    }
}
