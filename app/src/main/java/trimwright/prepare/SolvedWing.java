package trimwright.prepare;

import trimwright.air.AirState;
import trimwright.boat.WingSpec;
import trimwright.platform.Variable;
import trimwright.platform.WingAir;
import trimwright.text.NoAnswerException;
import trimwright.text.Texts;
import trimwright.wing.StripAir;
import trimwright.wing.Wing;
import trimwright.wing.WingAnswer;
import trimwright.wing.WingSolved;

/**
 * A wing in a state, in standard air, and its flow.
 *
 * @param source where its sections come from
 * @param air what each strip meets before the wing disturbs it
 */
record SolvedWing(WingSpec spec, SectionSource source, WingState state, Wing wing, StripAir air, WingSolved flow) {
    /** From foot to head; chosen: forces change by under a thousandth beyond. */
    static final int STRIPS = 40;

    /** Throws {@link NoAnswerException} where the flow cannot be found. */
    static SolvedWing of(WingSpec spec, Sections sections, WingState state) {
        Wing wing = Wing.of(spec, sections.family(), STRIPS);
        double roll = state.tack() * state.sailing().get(Variable.HEEL);
        double footHeight = WingAir.footHeight(spec, state.sailing(), state.conditions());
        if (!(footHeight > 0)) {
            throw new NoAnswerException(Texts.of("wing.foot_in_water"));
        }
        StripAir air = WingAir.of(wing, spec, state.sailing(), state.conditions(), AirState.STANDARD);
        WingAnswer answer =
                wing.placedAt(roll, footHeight).solve(air, WingAir.setting(state.sailing(), state.conditions()));
        if (!(answer instanceof WingSolved solved)) {
            throw new NoAnswerException(Texts.of("wing.no_flow"));
        }
        return new SolvedWing(spec, sections.source(), state, wing, air, solved);
    }

    /** Reynolds number of a strip's chord in the air it meets (-). */
    double reynolds(int strip) {
        return StrictMath.hypot(air.x(strip), air.y(strip))
                * wing.stripChord(strip)
                / air.state().kinematicViscosity();
    }
}
