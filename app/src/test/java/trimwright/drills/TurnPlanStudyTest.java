package trimwright.drills;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.TurnKind;
import trimwright.prepare.TargetBooks;
import trimwright.prepare.TargetRequest;
import trimwright.target.TargetBook;
import trimwright.text.Progress;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnOutcome;
import trimwright.turn.TurnTally;
import trimwright.units.Units;

/**
 * Plans of turns over a range of winds: run with -Dtrimwright.turns=gybe,tack/let-down (kinds and how begun) and -Dtrimwright.turns.winds=12,16,20; it
 * prints the table of docs/validation.md, some two minutes of a processor for each row of plans.
 */
@EnabledIfSystemProperty(named = "trimwright.turns", matches = "[a-z,/-]+")
class TurnPlanStudyTest {
    /** Of the table (-). */
    private static final double TURBULENCE = 0.07;

    /** What is asked of plans of tacks and gybes. */
    private static final double GAIN = 0.2;

    @Test
    void plansBeatNoneByAFifthAndKeepTheirWord() throws InterruptedException {
        BoatFile file = BoatFiles.find("whimbrel14");
        WingSpec wing = file.boat().wings().get(0);
        TargetBook book = new TargetBooks().of(TargetRequest.of(file, wing), Progress.NONE);
        List<String> poor = new ArrayList<>();
        for (String word : System.getProperty("trimwright.turns", "").split(",", -1)) {
            String[] named = word.split("/", -1);
            TurnKind kind = TurnWords.kind(named[0]);
            TurnBegin begin = named.length > 1 ? TurnWords.begin(named[1]) : TurnBegin.FOILS;
            for (String wind :
                    System.getProperty("trimwright.turns.winds", "12,16,20").split(",", -1)) {
                TurnPlanRun.Plans plans = TurnPlanRun.of(
                        DrillBoats.turn(
                                kind, begin, file, wing, book, Units.fromKnots(Double.parseDouble(wind)), TURBULENCE),
                        TurnPlanRun.chanceOf(file),
                        TurnPlanRun.TRIES,
                        TurnPlanRun.CHECKED,
                        Progress.NONE);
                row(word, wind, "no turn", plans.straight());
                row(word, wind, "none", plans.naive());
                row(word, wind, "full", plans.full().tally());
                row(
                        word,
                        wind,
                        plans.isKept() ? "safe" : "least bad",
                        plans.safe().tally());
                System.out.println(TurnPlanDocument.text(plans));
                if (plans.full().tally().metres() > (1 - GAIN) * plans.naive().metres()) {
                    poor.add(word + " in " + wind + " kn");
                }
            }
        }
        assertTrue(poor.isEmpty(), "less than a fifth saved: " + poor);
    }

    private static void row(String kind, String wind, String plan, TurnTally tally) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %s | %.0f | %.0f | %.1f | %.3f (%.3f to %.3f) | %.2f | %.2f | %.2f | %.2f | %.0f |%n",
                kind,
                wind,
                plan,
                tally.metres(),
                tally.quantile(TurnOutcome::logged, 0.5),
                Units.toKnots(tally.mean(TurnOutcome::least)),
                tally.spoilt(),
                tally.spoiltShare().low(),
                tally.spoiltShare().high(),
                tally.limit(),
                tally.touched(),
                tally.floor(),
                tally.capsized(),
                tally.mean(TurnOutcome::settled));
    }
}
