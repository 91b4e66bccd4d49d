package trimwright.platform;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.section.SectionFamily;
import trimwright.wing.PlacedWing;
import trimwright.wing.Wing;
import trimwright.wing.WingAnswer;
import trimwright.wing.WingChange;
import trimwright.wing.WingForce;
import trimwright.wing.WingSlope;
import trimwright.wing.WingSolved;

/** The wing on the boat: each strip's own wind, and the force brought to the origin of the body axes. */
final class WingPart {
    private final WingSpec spec;
    private final Wing wing;
    private final AirState air;

    WingPart(WingSpec spec, SectionFamily sections, int strips, AirState air) {
        this.spec = spec;
        this.wing = Wing.of(spec, sections, strips);
        this.air = air;
    }

    private WingPart(WingSpec spec, Wing wing, AirState air) {
        this.spec = spec;
        this.wing = wing;
        this.air = air;
    }

    WingPart withSheetLoadMax(double load) {
        return new WingPart(spec.withSheet(spec.sheet().withLoadMax(load)), wing, air);
    }

    WingSpec spec() {
        return spec;
    }

    /**
     * The wing's load in a state, or null where its equations have no answer.
     *
     * @param start load in a state nearby, null to begin anew
     */
    @Nullable
    WingLoad at(SailingState state, Conditions conditions, @Nullable WingLoad start) {
        double footHeight = WingAir.footHeight(spec, state, conditions);
        double roll = conditions.windward().sign() * state.get(Variable.HEEL);
        if (!(footHeight > 0) || !(Math.abs(roll) < 1)) {
            return null;
        }
        PlacedWing placed = placed(roll, footHeight, start);
        WingAnswer answer = placed.solve(
                WingAir.of(wing, spec, state, conditions, air),
                WingAir.setting(state, conditions),
                start == null ? null : start.flow());
        if (!(answer instanceof WingSolved solved)) {
            return null;
        }
        WingForce force = solved.force();
        double turning = conditions.windward().sign() * force.turningMoment();
        return new WingLoad(atOrigin(force), turning, turning / spec.sheet().lever(), placed, solved);
    }

    /** How a load found by {@link #at} in that state changes with a variable each; null in still air. */
    WingLoadChange @Nullable [] changes(SailingState state, Conditions conditions, WingLoad load, List<Variable> by) {
        WingChange[] changes = new WingChange[by.size()];
        for (int i = 0; i < changes.length; i++) {
            changes[i] = WingAirChange.of(wing, spec, state, conditions, by.get(i));
        }
        WingSlope[] slopes = load.flow().slopes(changes);
        if (slopes == null) {
            return null;
        }
        WingLoadChange[] loads = new WingLoadChange[changes.length];
        for (int i = 0; i < changes.length; i++) {
            double turning = conditions.windward().sign() * slopes[i].force().turningMoment();
            loads[i] = new WingLoadChange(
                    atOrigin(slopes[i].force()), turning / spec.sheet().lever(), slopes[i]);
        }
        return loads;
    }

    private ForceSum atOrigin(WingForce force) {
        ForceSum sum = new ForceSum();
        sum.add(force.x(), force.y(), force.z(), spec.x(), 0, -spec.footHeight());
        sum.addCouple(force.k(), force.m(), force.n());
        return sum;
    }

    /** The image in the sea is dear to compute and stays while heel and height stay. */
    private PlacedWing placed(double roll, double footHeight, @Nullable WingLoad start) {
        if (start != null && start.placed().heel() == roll && start.placed().footHeight() == footHeight) {
            return start.placed();
        }
        return wing.placedAt(roll, footHeight);
    }
}
