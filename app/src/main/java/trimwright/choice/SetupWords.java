package trimwright.choice;

import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trimwright.setup.GustLimit;
import trimwright.setup.SetupChoice;
import trimwright.text.Texts;
import trimwright.units.Units;

/** What is said of a setup in words. */
final class SetupWords {
    private SetupWords() {}

    /** One clause: recommended, or why not. */
    static String verdict(SetupRequest request, SetupChoice choice, SetupChoice.Setup setup) {
        SetupChoice.Doubt doubt = choice.doubt(setup);
        if (doubt == null) {
            return Texts.of(setup.equals(choice.recommended()) ? "choose.recommended" : "choose.slower");
        }
        return switch (doubt) {
            case NOT_COVERED ->
                Texts.of(
                        "choose.not_covered",
                        100 * (1 - setup.asForecast().answeredShare()),
                        Units.toKnots(request.grid().winds().get(0)),
                        Units.toKnots(request.grid()
                                .winds()
                                .get(request.grid().winds().size() - 1)));
            case CHANCE_NOT_KNOWN -> Texts.of("choose.chance_not_known");
            case GUST_PASSES_LIMIT -> {
                Map.Entry<GustLimit, Double> worst = setup.asForecast().overLimit().entrySet().stream()
                        .max(Map.Entry.comparingByValue())
                        .orElseThrow();
                yield Texts.of(
                        "choose.gust_passes",
                        Texts.of("choose.limit." + worst.getKey().key()),
                        100 * worst.getValue(),
                        100 * choice.chanceMax());
            }
        };
    }

    /** Key of the reason in files: null for what is recommended. */
    static @Nullable String reason(SetupChoice choice, SetupChoice.Setup setup) {
        SetupChoice.Doubt doubt = choice.doubt(setup);
        if (doubt != null) {
            return doubt.name().toLowerCase(Locale.ROOT);
        }
        return setup.equals(choice.recommended()) ? null : "slower";
    }
}
