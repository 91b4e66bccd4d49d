package trimwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import trimwright.boatfile.BoatFile;
import trimwright.boatfile.BoatFiles;
import trimwright.crew.TurnKind;
import trimwright.drills.DrillBoats;
import trimwright.drills.Pilot;
import trimwright.practice.Drill;
import trimwright.practice.DrillRun;
import trimwright.practice.DrillSetup;
import trimwright.raceday.LoneBoatBook;
import trimwright.start.StartTrial;
import trimwright.turn.TurnBegin;
import trimwright.turn.TurnChance;
import trimwright.turn.TurnStart;
import trimwright.units.Units;
import trimwright.weather.WaveSpec;

/**
 * The boat in time gives the same numbers to the last bit on one thread and on several, and on every Java: what is written in
 * docs/validation.md was made on one machine and Java, and every other must come to it.
 */
class SameBitsDocTest {
    private static final BoatFile FILE = BoatFiles.find("whimbrel14");
    private static final double WIND = Units.fromKnots(15);

    @Test
    void runsAreTheSameToTheBitOnAnyNumberOfThreadsAndAnyJava() throws InterruptedException, ExecutionException {
        Map<String, String> one = prints(1);
        assertEquals(one, prints(2));
        assertEquals(one, prints(8));
        StringBuilder table = new StringBuilder("| run | SHA-256 of its bits, the first half |\n|---|---|\n");
        one.forEach((run, print) ->
                table.append("| ").append(run).append(" | `").append(print).append("` |\n"));
        GeneratedBlock.check("docs/validation.md", "same bits", table.toString());
    }

    private static Map<String, String> prints(int threads) throws InterruptedException, ExecutionException {
        Map<String, Callable<String>> runs = new LinkedHashMap<>();
        for (Drill drill : List.of(Drill.GUSTS, Drill.GYBE, Drill.TACK, Drill.START)) {
            runs.put("drill " + drill.name().toLowerCase(java.util.Locale.ROOT) + ", 30 s", () -> drill(drill, null));
        }
        runs.put("drill hold in waves of 0.3 m and 3 s, 30 s", () -> drill(Drill.HOLD, new WaveSpec(0.3, 3, 0)));
        runs.put("a gybe without a plan", () -> print(turn(TurnKind.GYBE)));
        runs.put("a bear-away without a plan", () -> print(turn(TurnKind.BEAR_AWAY)));
        runs.put("gathering speed for a start", () -> print(gathered()));
        runs.put("a boat in a race, 200 s", () -> print(LoneBoatBook.sailed(200)));
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            Map<String, Future<String>> found = new LinkedHashMap<>();
            runs.forEach((name, run) -> found.put(name, pool.submit(run)));
            Map<String, String> prints = new LinkedHashMap<>();
            for (Map.Entry<String, Future<String>> each : found.entrySet()) {
                prints.put(each.getKey(), each.getValue().get());
            }
            return prints;
        } finally {
            pool.shutdown();
        }
    }

    private static String drill(Drill drill, @Nullable WaveSpec waves) {
        DrillSetup setup = DrillBoats.setup(
                        drill, FILE, FILE.boat().wings().get(0), LoneBoatBook.get(), WIND, /* seed= */ 3)
                .on(waves);
        DrillRun run = new DrillRun(setup, Pilot.REFERENCE.hand(setup));
        List<Object> states = new ArrayList<>();
        for (int i = 0; i < 30 / DrillRun.STEP; i++) {
            states.add(run.step().sight());
        }
        return print(states);
    }

    private static Object turn(TurnKind kind) {
        return new TurnStart(
                        DrillBoats.turn(
                                kind,
                                TurnBegin.FOILS,
                                FILE,
                                FILE.boat().wings().get(0),
                                LoneBoatBook.get(),
                                WIND,
                                /* intensity= */ 0.07),
                        TurnChance.of(5))
                .turnNaively();
    }

    private static Object gathered() {
        return new StartTrial(
                        DrillBoats.start(
                                FILE,
                                FILE.boat().wings().get(0),
                                LoneBoatBook.get(),
                                WIND,
                                /* intensity= */ 0.07,
                                Units.fromDegrees(100)),
                        5)
                .gathered(0.5);
    }

    private static String print(Object value) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            write(value, out);
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes.toByteArray());
            return HexFormat.of().formatHex(digest, 0, 16);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException | ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /** All numbers of a record, by their bits: printed decimals differ between Javas. */
    private static void write(@Nullable Object value, DataOutputStream out)
            throws IOException, ReflectiveOperationException {
        if (value instanceof Double number) {
            out.writeLong(Double.doubleToLongBits(number));
        } else if (value instanceof List<?> list) {
            for (Object each : list) {
                write(each, out);
            }
        } else if (value instanceof Record) {
            for (RecordComponent part : value.getClass().getRecordComponents()) {
                part.getAccessor().setAccessible(true);
                write(part.getAccessor().invoke(value), out);
            }
        } else {
            out.writeUTF(value instanceof Enum<?> name ? name.name() : String.valueOf(value));
        }
    }
}
