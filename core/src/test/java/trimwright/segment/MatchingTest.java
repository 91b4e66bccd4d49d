package trimwright.segment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.segment.Matching.Labelled;

class MatchingTest {
    @Test
    void halfOfTheUnionMatchesAndLessDoesNot() {
        Labelled truth = new Labelled(TurnKind.TACK, 0, 10);
        assertEquals(
                1,
                Matching.count(List.of(new Labelled(TurnKind.TACK, 5, 10)), List.of(truth))
                        .matched());
        assertEquals(
                0,
                Matching.count(List.of(new Labelled(TurnKind.TACK, 5.1, 10)), List.of(truth))
                        .matched());
        assertEquals(
                0,
                Matching.count(List.of(new Labelled(TurnKind.GYBE, 0, 10)), List.of(truth))
                        .matched());
    }

    @Test
    void eachPieceMatchesOnceAndTheBestPairGoesFirst() {
        List<Labelled> truth = List.of(new Labelled("a", 0, 10), new Labelled("a", 20, 30));
        List<Labelled> found = List.of(new Labelled("a", 0, 5), new Labelled("a", 0, 10), new Labelled("a", 21, 30));
        Matching.Count count = Matching.count(found, truth);
        assertEquals(2, count.matched());
        assertEquals(2.0 / 3, count.precision(), 1e-12);
        assertEquals(1.0, count.recall(), 1e-12);
    }
}
