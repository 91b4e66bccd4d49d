package trimwright.ingest.nmea;

import trimwright.ingest.IssueKind;
import trimwright.ingest.Issues;
import trimwright.units.Angles;
import trimwright.units.Units;

/**
 * From fields to SI values. Layouts of the sentences: gpsd, "NMEA Revealed" (key gpsd-nmea). An empty field is absent,
 * never zero; a field that is no number, or a number that its field cannot hold, is absent and counted, and the others
 * are used. Sentences of other kinds are passed over.
 */
public final class NmeaDecoder {
    private static final int RMC = type("RMC");
    private static final int GGA = type("GGA");
    private static final int GLL = type("GLL");
    private static final int VTG = type("VTG");
    private static final int ZDA = type("ZDA");
    private static final int HDT = type("HDT");
    private static final int HDG = type("HDG");
    private static final int HDM = type("HDM");
    private static final int VHW = type("VHW");
    private static final int MWV = type("MWV");
    private static final int VWR = type("VWR");
    private static final int VWT = type("VWT");
    private static final int MWD = type("MWD");
    private static final int ROT = type("ROT");
    private static final int XDR = type("XDR");
    private static final int MTW = type("MTW");

    private final Issues issues;
    private final XdrFields transducers;
    private long line;

    public NmeaDecoder(Issues issues) {
        this.issues = issues;
        transducers = new XdrFields(issues);
    }

    private static int type(String name) {
        return NmeaSentence.typeOf((byte) name.charAt(0), (byte) name.charAt(1), (byte) name.charAt(2));
    }

    /**
     * Fills the reading with what the sentence says.
     *
     * @param atLine named in the issues
     * @return false if it is of a kind that is not read, or has neither values nor a time
     */
    public boolean decode(NmeaSentence sentence, long atLine, NmeaReading reading) {
        line = atLine;
        int type = sentence.type();
        if (type == 0 || !decode(type, sentence, reading)) {
            return false;
        }
        if (sentence.badField() != NmeaSentence.NONE) {
            issues.add(IssueKind.BAD_NUMBER, line, sentence.bytes(), sentence.start() - 1, sentence.end());
        }
        return reading.hasValue() || reading.clockTrust() != NmeaReading.ClockTrust.NONE;
    }

    private boolean decode(int type, NmeaSentence s, NmeaReading r) {
        if (type == MWV) {
            decodeMwv(s, r);
        } else if (type == RMC) {
            decodeRmc(s, r);
        } else if (type == HDG) {
            decodeHdg(s, r);
        } else if (type == VWR || type == VWT) {
            decodeRelativeWind(s, r, type == VWR ? NmeaLayout.VWR : NmeaLayout.VWT);
        } else if (type == VHW) {
            r.reset(NmeaLayout.VHW, s.talker());
            r.setValue(0, speed(s, 5, 7, 0));
            r.setValue(1, compass(s, 1));
            r.setValue(2, compass(s, 3));
        } else if (type == GLL) {
            r.reset(NmeaLayout.GLL, s.talker());
            decodeFix(s, r, 1, 5, isValid(s, 6, 7));
        } else if (type == GGA) {
            r.reset(NmeaLayout.GGA, s.talker());
            double quality = s.number(6);
            decodeFix(s, r, 2, 1, quality >= 1 && quality <= 5);
        } else if (type == VTG) {
            decodeVtg(s, r);
        } else if (type == ZDA) {
            decodeZda(s, r);
        } else if (type == HDM || type == HDT) {
            r.reset(type == HDM ? NmeaLayout.HDM : NmeaLayout.HDT, s.talker());
            r.setValue(0, compass(s, 1));
        } else if (type == MWD) {
            r.reset(NmeaLayout.MWD, s.talker());
            r.setValue(0, compass(s, 1));
            r.setValue(1, compass(s, 3));
            r.setValue(2, speed(s, 5, 0, 7));
        } else if (type == ROT) {
            r.reset(NmeaLayout.ROT, s.talker());
            if (s.letter(2) != 'V') {
                // Degrees per minute, negative: bow to port.
                r.setValue(0, Units.fromDegrees(s.number(1)) / 60.0);
            }
        } else if (type == MTW) {
            r.reset(NmeaLayout.MTW, s.talker());
            r.setValue(0, s.letter(2) == 'C' ? Units.fromCelsius(s.number(1)) : Double.NaN);
        } else if (type == XDR) {
            r.reset(NmeaLayout.XDR, s.talker());
            transducers.decode(s, line, r);
        } else {
            return false;
        }
        return true;
    }

    private void decodeMwv(NmeaSentence s, NmeaReading r) {
        byte reference = s.letter(2);
        r.reset(reference == 'T' ? NmeaLayout.MWV_T : NmeaLayout.MWV_R, s.talker());
        if ((reference != 'R' && reference != 'T') || s.letter(5) == 'V') {
            return;
        }
        r.setValue(0, relative(s, 1));
        double speed = notNegative(s, 3);
        // The unit letter is part of the value; without a known one there is no value.
        r.setValue(
                1,
                switch (s.letter(4)) {
                    case 'N' -> Units.fromKnots(speed);
                    case 'M' -> speed;
                    case 'K' -> Units.fromKmh(speed);
                    case 'S' -> Units.fromMilesPerHour(speed);
                    default -> Double.NaN;
                });
    }

    private void decodeRelativeWind(NmeaSentence s, NmeaReading r, NmeaLayout layout) {
        r.reset(layout, s.talker());
        double angle = Units.fromDegrees(inRange(s, 1, 0, 180));
        byte side = s.letter(2);
        // Straight ahead needs no side.
        if (side == 'R' || angle == 0) {
            r.setValue(0, angle);
        } else if (side == 'L') {
            r.setValue(0, Angles.signed(-angle));
        }
        double kn = Units.fromKnots(notNegative(s, 3));
        double ms = notNegative(s, 5);
        double kmh = Units.fromKmh(notNegative(s, 7));
        r.setValue(1, !Double.isNaN(kn) ? kn : !Double.isNaN(ms) ? ms : kmh);
    }

    private void decodeRmc(NmeaSentence s, NmeaReading r) {
        r.reset(NmeaLayout.RMC, s.talker());
        boolean valid = isValid(s, 2, 12);
        decodeFix(s, r, 3, 1, valid);
        if (valid) {
            r.setValue(2, Units.fromKnots(notNegative(s, 7)));
            r.setValue(3, compass(s, 8));
            r.setValue(4, eastPositive(s, 10));
        }
        if (!s.isEmpty(9)) {
            int day = s.digits(9, 0, 2);
            int month = s.digits(9, 2, 2);
            int year = s.length(9) == 6 ? s.digits(9, 4, 2) : -1;
            setDate(s, r, year, month, day);
        }
    }

    private void decodeZda(NmeaSentence s, NmeaReading r) {
        r.reset(NmeaLayout.ZDA, s.talker());
        r.setTime(s.timeOfDay(1), NmeaReading.ClockTrust.VALID);
        if (!s.isEmpty(2) || !s.isEmpty(3) || !s.isEmpty(4)) {
            setDate(s, r, s.digits(4, 0, s.length(4)), s.digits(3, 0, s.length(3)), s.digits(2, 0, s.length(2)));
        }
    }

    private void setDate(NmeaSentence s, NmeaReading r, int year, int month, int day) {
        // Days of a month are checked where the century is known.
        if (year < 0 || year > 9999 || month < 1 || month > 12 || day < 1 || day > 31) {
            issues.add(IssueKind.BAD_DATE, line, s.bytes(), s.start() - 1, s.end());
        } else {
            r.setDate(year, month, day);
        }
    }

    private void decodeFix(NmeaSentence s, NmeaReading r, int position, int time, boolean valid) {
        r.setTime(s.timeOfDay(time), valid ? NmeaReading.ClockTrust.VALID : NmeaReading.ClockTrust.VOID);
        if (valid) {
            double latitude = coordinate(s, position, 'N', 'S', 90);
            double longitude = coordinate(s, position + 2, 'E', 'W', 180);
            // Half a position is none.
            if (!Double.isNaN(latitude) && !Double.isNaN(longitude)) {
                r.setValue(0, latitude);
                r.setValue(1, longitude);
            }
        }
    }

    private void decodeVtg(NmeaSentence s, NmeaReading r) {
        r.reset(NmeaLayout.VTG, s.talker());
        // The old form has no unit letters: course, magnetic course, knots, km/h.
        boolean old = s.letter(2) != 'T' && s.letter(4) != 'M' && s.letter(6) != 'N';
        if (!old && s.letter(9) != 0 && !isFixMode(s.letter(9))) {
            return;
        }
        r.setValue(0, old ? speed(s, 3, 4, 0) : speed(s, 5, 7, 0));
        r.setValue(1, compass(s, 1));
        r.setValue(2, compass(s, old ? 2 : 3));
    }

    private void decodeHdg(NmeaSentence s, NmeaReading r) {
        r.reset(NmeaLayout.HDG, s.talker());
        double sensor = compass(s, 1);
        double deviation = eastPositive(s, 2);
        r.setValue(0, Double.isNaN(deviation) ? sensor : Angles.compass(sensor + deviation));
        r.setValue(1, deviation);
        r.setValue(2, eastPositive(s, 4));
    }

    /** The mode letter, where there is one, stands above the status. */
    private static boolean isValid(NmeaSentence s, int status, int mode) {
        byte letter = s.letter(mode);
        return letter == 0 ? s.letter(status) == 'A' : isFixMode(letter);
    }

    /** A autonomous, D differential, F and R phase, P precise; not E estimated, M manual, S simulator, N none (the last from memory). */
    private static boolean isFixMode(byte letter) {
        return letter == 'A' || letter == 'D' || letter == 'F' || letter == 'R' || letter == 'P';
    }

    private double speed(NmeaSentence s, int knots, int kilometresPerHour, int metresPerSecond) {
        double value = Units.fromKnots(notNegative(s, knots));
        if (Double.isNaN(value) && metresPerSecond > 0) {
            value = notNegative(s, metresPerSecond);
        }
        if (Double.isNaN(value) && kilometresPerHour > 0) {
            value = Units.fromKmh(notNegative(s, kilometresPerHour));
        }
        return value;
    }

    private double compass(NmeaSentence s, int i) {
        return Angles.compass(Units.fromDegrees(inRange(s, i, 0, 360)));
    }

    private double relative(NmeaSentence s, int i) {
        return Angles.signed(Units.fromDegrees(inRange(s, i, 0, 360)));
    }

    /** Variation and deviation: positive to the east. */
    private double eastPositive(NmeaSentence s, int i) {
        double angle = Units.fromDegrees(inRange(s, i, -180, 180));
        byte side = s.letter(i + 1);
        if (side == 'W') {
            return -angle;
        }
        return side == 'E' ? angle : Double.NaN;
    }

    /** Degrees and minutes run together, {@code dddmm.mmm}, with any number of decimals. */
    private double coordinate(NmeaSentence s, int i, char positive, char negative, double most) {
        double packed = s.number(i);
        byte side = s.letter(i + 1);
        if (Double.isNaN(packed) || (side != positive && side != negative)) {
            return Double.NaN;
        }
        double degrees = Math.floor(packed / 100);
        double minutes = packed - 100 * degrees;
        double angle = degrees + minutes / 60;
        if (packed < 0 || minutes >= 60 || angle > most) {
            impossible(s);
            return Double.NaN;
        }
        return Units.fromDegrees(side == negative ? -angle : angle);
    }

    private double notNegative(NmeaSentence s, int i) {
        return inRange(s, i, 0, Double.MAX_VALUE);
    }

    private double inRange(NmeaSentence s, int i, double least, double most) {
        double value = s.number(i);
        if (value < least || value > most) {
            impossible(s);
            return Double.NaN;
        }
        return value;
    }

    private void impossible(NmeaSentence s) {
        issues.add(IssueKind.IMPOSSIBLE_VALUE, line, s.bytes(), s.start() - 1, s.end());
    }
}
