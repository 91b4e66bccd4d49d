package trimwright.ingest.nmea;

import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.units.Units;

/**
 * The repeated groups of XDR: type, value, unit, name. A group that does not fit is left out up to its name, and reading
 * goes on behind it, so that one shifted field costs one transducer. Names are free text; those below were seen in logs.
 * Signs are the instrument's own.
 */
final class XdrFields {
    private static final String[][] NAMES = {
        {"HEEL", "ROLL"}, {"TRIM", "PITCH"}, {"RUDDER"}, {"AIRTEMP", "ENV_OUTSIDE_T"}, {"BARO", "BAROMETER"}
    };
    private static final int FIRST_ANGLE = 0;
    private static final int LAST_ANGLE = 2;
    private static final int TEMPERATURE = 3;
    private static final int PRESSURE = 4;

    private final Issues issues;

    XdrFields(Issues issues) {
        this.issues = issues;
    }

    void decode(NmeaSentence s, long line, NmeaReading r) {
        int i = 1;
        while (i <= s.fieldCount()) {
            if (isGroup(s, i)) {
                decodeGroup(s, i, line, r);
                i += 4;
            } else {
                issues.add(IssueKind.BAD_NUMBER, line, s.bytes(), s.start() - 1, s.end());
                i = behindNextName(s, i);
            }
        }
    }

    /** Asked without marking the field bad: the group is counted once, here. */
    private static boolean isGroup(NmeaSentence s, int i) {
        return s.length(i) == 1
                && (s.isEmpty(i + 1) || s.isNumber(i + 1))
                && s.length(i + 2) <= 1
                && (s.isEmpty(i + 2) || !s.isNumber(i + 2));
    }

    private static int behindNextName(NmeaSentence s, int from) {
        for (int i = from; i <= s.fieldCount(); i++) {
            if (s.length(i) > 1 && Character.isLetter((char) s.byteAt(i, 0))) {
                return i + 1;
            }
        }
        return s.fieldCount() + 1;
    }

    private void decodeGroup(NmeaSentence s, int i, long line, NmeaReading r) {
        if (s.isEmpty(i + 1)) {
            return;
        }
        double value = s.number(i + 1);
        byte type = s.letter(i);
        byte unit = s.letter(i + 2);
        int known = find(s, i + 3);
        if (known >= FIRST_ANGLE && known <= LAST_ANGLE && type == 'A' && unit == 'D') {
            r.setValue(known, Units.fromDegrees(value));
        } else if (known == TEMPERATURE && type == 'C' && unit == 'C') {
            r.setValue(known, Units.fromCelsius(value));
        } else if (known == PRESSURE && type == 'P' && (unit == 'B' || unit == 'P')) {
            r.setValue(known, unit == 'B' ? Units.fromBar(value) : value);
        } else {
            issues.add(IssueKind.UNKNOWN_TRANSDUCER, line, s.bytes(), s.start() - 1, s.end());
        }
    }

    private static int find(NmeaSentence s, int i) {
        for (int known = 0; known < NAMES.length; known++) {
            for (String name : NAMES[known]) {
                if (isName(s, i, name)) {
                    return known;
                }
            }
        }
        return -1;
    }

    private static boolean isName(NmeaSentence s, int i, String name) {
        if (s.length(i) != name.length()) {
            return false;
        }
        for (int at = 0; at < name.length(); at++) {
            if (Character.toUpperCase((char) s.byteAt(i, at)) != name.charAt(at)) {
                return false;
            }
        }
        return true;
    }
}
