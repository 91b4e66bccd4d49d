package trimwright.segment;

import java.util.List;

/** All that one boat's track was cut into, each list in order of time. */
public record Pieces(List<Leg> legs, List<Turn> turns, List<Phase> phases, List<OffFoil> offFoil) {
    public Pieces {
        legs = List.copyOf(legs);
        turns = List.copyOf(turns);
        phases = List.copyOf(phases);
        offFoil = List.copyOf(offFoil);
    }
}
