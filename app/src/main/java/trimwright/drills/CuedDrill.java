package trimwright.drills;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.crew.WingHand;
import trimwright.plans.KeptPlan;
import trimwright.practice.DrillMoment;
import trimwright.practice.DrillResult;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.turn.CueLine;
import trimwright.turn.CueLine.Cue;
import trimwright.turn.CuedHand;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnChance;
import trimwright.units.Units;

/** A drill of tacks or gybes in which every turn is followed along a kept plan's cues. */
public final class CuedDrill {
    /** Who has the wing where the plan's own hand sails. */
    public static final String PILOT = "plan";

    /** A plan is followed in a wind that differs by no more (m/s): chosen, two knots, as in debriefs. */
    private static final double WIND = Units.fromKnots(2);

    private final DrillSetup setup;
    private final KeptPlan plan;
    private final List<CueLine> lines;

    /** @throws UserInputException where the plan is of another turn than the drill, or does not begin on the foils */
    public CuedDrill(DrillSetup setup, KeptPlan plan) {
        if (!plan.kind().name().equals(setup.drill().name()) || plan.begin() != TurnBegin.FOILS) {
            throw new UserInputException(Texts.of("practice.other_plan", plan.name(), DrillBoats.word(setup.drill())));
        }
        this.setup = setup;
        this.plan = plan;
        lines = setup.drill().words().stream()
                .map(word -> new CueLine(plan.moves(), word))
                .toList();
    }

    /** Along the kept plan for the drill's turn and wind; null where there is none. */
    public static @Nullable CuedDrill find(DrillSetup setup, List<KeptPlan> plans) {
        return plans.stream()
                .filter(plan -> plan.kind().name().equals(setup.drill().name()) && plan.begin() == TurnBegin.FOILS)
                .filter(plan -> Math.abs(plan.wind() - setup.wind()) <= WIND)
                .min(Comparator.comparingDouble(plan -> Math.abs(plan.wind() - setup.wind())))
                .map(plan -> new CuedDrill(setup, plan))
                .orElse(null);
    }

    /** The plan's own hand, its delay drawn from the drill's seed. */
    public WingHand hand() {
        List<Double> words = setup.drill().words().stream()
                .map(word -> word + DrillRun.SETTLING)
                .toList();
        return new CuedHand(plan.moves(), TurnChance.of(setup.seed()), setup.wing(), words);
    }

    /** A run with driver and flight controller by the plan. */
    public DrillRun run(WingHand hand) {
        return new DrillRun(setup, hand, plan.moves().conduct());
    }

    /** The whole drill. */
    public DrillResult sail(WingHand hand) {
        DrillRun run = run(hand);
        while (!run.isOver()) {
            see(run.step());
        }
        return run.result();
    }

    /** Looks at the next instant. */
    public void see(DrillMoment moment) {
        lines.forEach(line -> line.see(moment));
    }

    /** The next cue with the move that belongs to it, in words; null where no more turns come. */
    public @Nullable String next() {
        for (CueLine line : lines) {
            Cue cue = line.next();
            if (cue != null) {
                return Texts.of("practice.next", cue(cue), move(cue));
            }
        }
        return null;
    }

    private String cue(Cue cue) {
        return switch (cue) {
            case WORD -> Texts.of("turnplan.cue.word");
            case BOW -> Texts.of("turnplan.cue.bow");
            case OVER -> TurnCues.wind(plan.moves().over());
            case ON -> TurnCues.wind(-plan.moves().on());
            case HELD -> Texts.of("turnplan.cue.held");
        };
    }

    private String move(Cue cue) {
        return switch (cue) {
            case WORD, BOW -> TurnCues.ease(plan.moves().ease());
            case OVER -> TurnCues.over(plan.moves().across());
            case ON -> TurnCues.on(plan.moves().power());
            case HELD -> Texts.of("turnplan.move.trim");
        };
    }

    /** Adds the cues of each turn to the drill's document. */
    public void put(ObjectNode document) {
        document.put("plan", plan.name());
        ArrayNode cues = document.putArray("plan_cues");
        for (CueLine line : lines) {
            ObjectNode node = cues.addObject().put("word_s", line.word());
            node.put("bow_s", line.after(Cue.BOW));
            node.put("over_awa_deg", Units.toDegrees(plan.moves().over()));
            node.put("over_s", line.after(Cue.OVER));
            node.put("camber_s", line.camber());
            node.put("on_awa_deg", Units.toDegrees(plan.moves().on()));
            node.put("on_s", line.after(Cue.ON));
            node.put("held_s", line.after(Cue.HELD));
        }
    }

    /** The same in words, a line for each turn. */
    public String text() {
        StringBuilder text = new StringBuilder();
        for (CueLine line : lines) {
            text.append(Texts.of(
                            "practice.cues",
                            line.word(),
                            told(line.after(Cue.BOW)),
                            cue(Cue.OVER),
                            told(line.after(Cue.OVER)),
                            told(line.camber()),
                            cue(Cue.ON),
                            told(line.after(Cue.ON)),
                            told(line.after(Cue.HELD))))
                    .append('\n');
        }
        return text.toString();
    }

    private static String told(@Nullable Double seconds) {
        return seconds == null ? "-" : Texts.of("practice.seconds", seconds);
    }
}
