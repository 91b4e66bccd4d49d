package trimwright.drills;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.turn.AbortFinder;
import trimwright.turn.TurnAbort;
import trimwright.units.Units;

/** When to give a turn up, and how, in words and as JSON. */
final class TurnAborts {
    private TurnAborts() {}

    static ObjectNode of(AbortFinder.Found found) {
        ObjectNode node = JsonOut.mapper().createObjectNode();
        TurnAbort abort = found.abort();
        node.put("said", said(found));
        node.put("cue", cue(abort));
        node.put("move", move(abort));
        node.put("sign", word(abort.sign()));
        switch (abort.sign()) {
            case TOUCH -> {}
            case LEEWARD, WINDWARD -> node.put("heel_deg", Units.toDegrees(abort.least()));
            case SLOWING -> node.put("slower_ratio", abort.least());
        }
        node.put("action", word(abort.action()));
        node.put("telling", found.isTelling());
        node.put("shown", found.shown()).put("shown_bad", found.bad());
        node.put("others", found.others()).put("others_bad", found.othersBad());
        node.put("shown_spoilt", found.spoilt()).put("given_up_spoilt", found.stillSpoilt());
        return node;
    }

    static String said(AbortFinder.Found found) {
        String what = Texts.of("turnplan.abort.what", cue(found.abort()), move(found.abort()));
        return what
                + (found.isTelling()
                        ? Texts.of(
                                "turnplan.abort.worth",
                                found.shown(),
                                found.shown() + found.others(),
                                found.bad(),
                                found.othersBad(),
                                found.others(),
                                found.spoilt(),
                                found.stillSpoilt())
                        : Texts.of("turnplan.abort.beyond"));
    }

    private static String cue(TurnAbort abort) {
        return switch (abort.sign()) {
            case TOUCH -> Texts.of("turnplan.abort.touch");
            case LEEWARD -> Texts.of("turnplan.abort.leeward", Units.toDegrees(abort.least()));
            case WINDWARD -> Texts.of("turnplan.abort.windward", Units.toDegrees(abort.least()));
            case SLOWING -> Texts.of("turnplan.abort.slowing", 100 * abort.least());
        };
    }

    private static String move(TurnAbort abort) {
        return Texts.of("turnplan.abort." + word(abort.action()));
    }

    private static String word(Enum<?> of) {
        return of.name().toLowerCase(Locale.ROOT);
    }
}
