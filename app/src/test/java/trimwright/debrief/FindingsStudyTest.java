package trimwright.debrief;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import trimwright.chance.RandomStream;
import trimwright.crew.Habits;
import trimwright.crew.Temper;
import trimwright.fleet.Difference;
import trimwright.fleet.Question;
import trimwright.sim.Entry;
import trimwright.sim.Perturbation;
import trimwright.sim.Scenario;
import trimwright.sim.SensorFaults;
import trimwright.units.Units;
import trimwright.weather.TurbulenceSpectrum;
import trimwright.weather.WeatherSpec;

/**
 * How often the comparison of boats tells what is not there, and finds what is: many cheap days of four boats alike to the last screw, with
 * true instruments, in a wind of their own each. {@code -Dtrimwright.findings=1-200} without habits: whatever is told is false, and
 * intervals should hold nothing. With {@code -Dtrimwright.findings.habit=twist} (or moment, height) one boat of each day has it.
 * Some five seconds of a processor a day; prints the rows of docs/validation.md.
 */
@EnabledIfSystemProperty(named = "trimwright.findings", matches = "[0-9]+-[0-9]+")
class FindingsStudyTest {
    private static final int MINUTES = 20;
    private static final List<String> BOATS = List.of("Avocet", "Curlew", "Dunlin", "Godwit");

    /** Standard errors of its question from which a planted habit is to be found. */
    private static final double FINDABLE = 4.5;

    /** A planted habit and the question that asks for it. */
    private enum Habit {
        NONE(Question.TWIST, 0),
        TWIST(Question.TWIST, Math.toRadians(8)),
        MOMENT(Question.HEEL, 0),
        HEIGHT(Question.RIDE_HEIGHT, 0.15);

        private final Question question;
        private final double size;

        Habit(Question question, double size) {
            this.question = question;
            this.size = size;
        }

        Habits of() {
            return switch (this) {
                case NONE -> Habits.NONE;
                case TWIST -> new Habits(1, 0, size, 0, 0);
                case MOMENT -> new Habits(0.88, 0, 0, 0, 0);
                case HEIGHT -> new Habits(1, 0, 0, size, 0);
            };
        }
    }

    /** What intervals of a question held. */
    private static final class Coverage {
        private int asked;
        private int held;
        private int told;

        void add(Difference one, double truth) {
            asked++;
            held += one.low() <= truth && truth <= one.high() ? 1 : 0;
            told += one.isTold() ? 1 : 0;
        }
    }

    @Test
    void whatIsToldOfManyDays() throws IOException {
        String[] range = System.getProperty("trimwright.findings", "").split("-", -1);
        Habit habit = Habit.valueOf(
                System.getProperty("trimwright.findings.habit", "none").toUpperCase(Locale.ROOT));
        Map<Question, Coverage> coverage = new EnumMap<>(Question.class);
        int days = 0;
        int falseDays = 0;
        int falseSpeed = 0;
        int findable = 0;
        int found = 0;
        for (int seed = Integer.parseInt(range[0]); seed <= Integer.parseInt(range[1]); seed++) {
            String who = habit == Habit.NONE ? "" : BOATS.get(seed % BOATS.size());
            List<Difference> all = day(seed, who, habit).fleet().differences();
            boolean isFalse = false;
            boolean isFalseSpeed = false;
            for (Difference one : all) {
                boolean isPlanted = one.boat().equals(who.toLowerCase(Locale.ROOT));
                if (habit == Habit.NONE) {
                    coverage.computeIfAbsent(one.question(), q -> new Coverage())
                            .add(one, 0);
                    isFalse |= one.isTold();
                    isFalseSpeed |= one.isTold() && one.question().family() == Question.Family.SPEED;
                } else if (isPlanted && one.question() == habit.question && habit.size >= FINDABLE * one.error()) {
                    findable++;
                    found += one.isTold() && one.value() > 0 ? 1 : 0;
                }
            }
            days++;
            falseDays += isFalse ? 1 : 0;
            falseSpeed += isFalseSpeed ? 1 : 0;
        }
        if (habit == Habit.NONE) {
            System.out.printf(
                    Locale.ROOT, "%d days, told something false on %d, a speed on %d%n", days, falseDays, falseSpeed);
            coverage.forEach((question, one) -> System.out.printf(
                    Locale.ROOT,
                    "| %s | %d | %.3f | %.4f |%n",
                    question.name().toLowerCase(Locale.ROOT),
                    one.asked,
                    (double) one.held / one.asked,
                    (double) one.told / one.asked));
            assertTrue(days > 0);
        } else {
            System.out.printf(Locale.ROOT, "| %s | %d days | %d findable | %d found |%n", habit, days, findable, found);
        }
    }

    private static DebriefReport day(int seed, String who, Habit habit) throws IOException {
        RandomStream random = RandomStream.of(seed, "a day for findings");
        WeatherSpec weather = new WeatherSpec(
                Units.fromKnots(random.uniform(13, 17)),
                0,
                10,
                random.uniform(0.04, 0.08),
                TurbulenceSpectrum.KAIMAL,
                Math.toRadians(3),
                0.02,
                0.05);
        List<Entry> entries = new ArrayList<>();
        for (String boat : BOATS) {
            Temper temper = new Temper(Math.toRadians(4), Math.toRadians(1), random.uniform(), 0.5, 1);
            Habits has = boat.equals(who) ? habit.of() : Habits.NONE;
            entries.add(new Entry(boat, has, temper, SensorFaults.NONE, Perturbation.NONE));
        }
        Path folder = Files.createTempDirectory("findings");
        try {
            return SimulatedDay.of(
                            new Scenario(seed, weather, Scenario.Wakes.NONE, entries),
                            MINUTES,
                            folder.resolve("day"),
                            SimulatedDayTest.BOOK)
                    .debrief(null);
        } finally {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
                    Files.delete(file);
                }
            }
        }
    }
}
