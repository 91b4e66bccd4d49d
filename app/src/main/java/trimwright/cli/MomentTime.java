package trimwright.cli;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import trimwright.store.SessionInfo;
import trimwright.text.Texts;
import trimwright.text.UserInputException;

/** Times of moments as people give and read them: time of day on board, or seconds from the session's begin after a plus. */
final class MomentTime {
    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

    private MomentTime() {}

    /** Time of day on board at so many seconds from the session's begin. */
    static String shown(SessionInfo session, double seconds) {
        return SHOWN.format(begin(session).plusNanos(Math.round(seconds * 1e9)));
    }

    /**
     * Seconds from the session's begin.
     *
     * @param given {@code 14:05:30} or {@code +330}; a time of day before the begin is one of the next day
     */
    static double seconds(SessionInfo session, String given) {
        if (given.startsWith("+")) {
            try {
                return Double.parseDouble(given.substring(1));
            } catch (NumberFormatException e) {
                throw new UserInputException(Texts.of("moment.at_wrong", given), e);
            }
        }
        try {
            LocalDateTime begin = begin(session);
            LocalDateTime at = begin.toLocalDate().atTime(LocalTime.parse(given));
            if (at.isBefore(begin)) {
                at = at.plusDays(1);
            }
            return Duration.between(begin, at).toMillis() / 1e3;
        } catch (DateTimeParseException e) {
            throw new UserInputException(Texts.of("moment.at_wrong", given), e);
        }
    }

    private static LocalDateTime begin(SessionInfo session) {
        return LocalDateTime.ofInstant(
                session.start().plusSeconds(session.offset().seconds()), ZoneOffset.UTC);
    }
}
