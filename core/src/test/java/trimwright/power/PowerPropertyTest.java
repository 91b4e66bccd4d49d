package trimwright.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.boat.Handling;
import trimwright.boat.SheetTackle;
import trimwright.boat.Whimbrel14;

class PowerPropertyTest {
    /** Rounding of a few operations. */
    private static final double ROUNDING = 1e-9;

    private static CriticalPower drawn(Random random) {
        double power = 100 + 300 * random.nextDouble();
        return new CriticalPower(power, 5_000 + 20_000 * random.nextDouble(), power * (2 + 4 * random.nextDouble()));
    }

    @Test
    void timePowerAndWorkAgree() {
        Random random = new Random(1);
        for (int i = 0; i < 200; i++) {
            CriticalPower one = drawn(random);
            double seconds = 0.5 + 600 * random.nextDouble();
            double power = one.most(seconds);
            assertEquals(seconds, one.secondsAt(power), ROUNDING * 1e3 * seconds);
            assertEquals(seconds, one.secondsFor(power * seconds), ROUNDING * 1e3 * seconds);
            assertTrue(one.atFitness(0.8).secondsFor(power * seconds) > seconds);
        }
    }

    @Test
    void theStoreEmptiesByWorkAndFillsTowardsFull() {
        CriticalPower one = new CriticalPower(230, 12_000, 1_420);
        assertEquals(12_000 - 170 * 30, one.left(12_000, 400, 30), ROUNDING * 12_000);
        // A second half of the rest begins where the first ended.
        double once = one.left(4_000, 100, 60);
        double twice = one.left(one.left(4_000, 100, 30), 100, 30);
        assertEquals(once, twice, ROUNDING * 12_000);
        assertTrue(once > 4_000 && once < 12_000);
        assertEquals(12_000, one.left(4_000, 0, 1e5), ROUNDING * 12_000);
        double refill = one.secondsToRefill(4_000, 100, 0.9);
        assertEquals(0.9 * 12_000, one.left(4_000, 100, refill), ROUNDING * 12_000);
        assertEquals(0, one.secondsToRefill(11_000, 100, 0.9));
        assertEquals(Double.POSITIVE_INFINITY, one.secondsToRefill(4_000, 230, 0.9));
    }

    @Test
    void haulingTakesPowerOrTheRopesOwnTime() {
        Hauling hauling = new Hauling(new SheetTackle(4, 8, 0.7, 6_000), 0.3);
        double load = 4_600;
        // Work at the wing is load times rope, whatever the rate.
        double angle = 0.1;
        double work = load * 4 * angle;
        assertEquals(angle / hauling.rate(load, 460), hauling.seconds(angle, work, 460), ROUNDING);
        assertEquals(4 * angle / 0.3, hauling.seconds(angle, 0, 460), ROUNDING);
        CriticalPower one = new CriticalPower(230, 12_000, 1_420);
        double allOut = hauling.secondsAllOut(angle, work, one, 2);
        assertTrue(allOut < hauling.seconds(angle, work, 460));
    }

    /** The account by hand: 460 W less 120 W of oil, 1,600 J a turn of oil, sheet by moment times angle over efficiency. */
    @Test
    void theAccountAddsUp() {
        Handling handling = new Handling(
                new Handling.ControlRates(0.7, 0.3, 0.15, 0.09),
                new Handling.Grinders(2, 230, 12_000, 1_420),
                new Handling.SheetWork(0.005, 0.25),
                0.5,
                List.of(new Handling.OilUser("rakes", 50, 500), new Handling.OilUser("boards", 10, 300)),
                null);
        double moment = 16_000;
        PowerAccount account = PowerAccount.of(handling, 0.8, moment, 400, 1);
        double sheet = 16_000 * 0.005 / 0.8;
        double turn = 1_600 + 0.5 * 16_000 * 0.25 / 0.8;
        assertEquals(120, account.oil(), ROUNDING);
        assertEquals(sheet, account.sheet(), ROUNDING);
        assertEquals(turn, account.turnWork(), ROUNDING * turn);
        assertEquals((int) ((460 - 120 - sheet) * 400 / turn), account.turns());
        assertEquals(
                List.of("rakes", "boards", "sheet"),
                account.steps().stream().map(PowerAccount.Step::name).toList());
        assertEquals(
                turn,
                account.steps().stream().mapToDouble(PowerAccount.Step::work).sum(),
                ROUNDING * turn);
    }

    /** A fifth less of one consumer, against an account made anew with that consumer's figures. */
    @Test
    void aSavingIsWorthWhatTheAccountWithoutItSays() {
        Handling.Grinders two = new Handling.Grinders(2, 230, 12_000, 1_420);
        Handling.ControlRates rates = new Handling.ControlRates(0.7, 0.3, 0.15, 0.09);
        List<Handling.OilUser> oil =
                List.of(new Handling.OilUser("rakes", 50, 500), new Handling.OilUser("boards", 10, 900));
        Handling whole = new Handling(rates, two, new Handling.SheetWork(0.005, 0.25), 0.5, oil, null);
        Handling less = new Handling(
                rates,
                two,
                new Handling.SheetWork(0.005, 0.25),
                0.5,
                List.of(new Handling.OilUser("rakes", 40, 400), new Handling.OilUser("boards", 10, 900)),
                null);
        // A lap so long that whole turns are as good as parts of them.
        double lap = 1e5;
        PowerAccount before = PowerAccount.of(whole, 0.8, 2_000, lap, 1);
        PowerAccount after = PowerAccount.of(less, 0.8, 2_000, lap, 1);
        PowerAccount.Saving rakes = before.savings().get(0);
        double turnsBefore = (before.supply() - before.oil() - before.sheet()) * lap / before.turnWork();
        double turnsAfter = (after.supply() - after.oil() - after.sheet()) * lap / after.turnWork();
        assertEquals("rakes", rakes.name());
        assertEquals(turnsAfter - turnsBefore, rakes.turns(), 1e-9 * turnsBefore);
        double most = before.savings().stream()
                .mapToDouble(PowerAccount.Saving::turns)
                .max()
                .orElseThrow();
        assertEquals(most, Objects.requireNonNull(before.cheapestSaving()).turns(), 0);
    }

    @Test
    void theWingComesInSlowerAgainstMoreLoadAndNoFasterThanTheRope() {
        Handling handling = Objects.requireNonNull(Whimbrel14.boat().handling());
        SheetTackle tackle = Whimbrel14.boat().getWing("tall").sheet();
        PowerAccount account = PowerAccount.of(handling, tackle.efficiency(), 10_000, 360, 1);
        double rope = handling.rates().sheetHaul() / tackle.lever();
        double last = Double.POSITIVE_INFINITY;
        for (HaulSpeed speed : HaulSpeed.listOf(handling, tackle, account)) {
            assertTrue(speed.keptUp() <= Math.min(last, rope) && speed.burst() <= rope * (1 + 1e-12));
            assertTrue(speed.keptUp() <= speed.burst());
            // Power at the wing is that of the grinders less the tackle's losses, where the rope does not limit.
            if (speed.keptUp() < rope) {
                double power = speed.load() * speed.keptUp() * tackle.lever();
                assertEquals(account.leftForSheet() * tackle.efficiency(), power, 1e-9 * power);
            }
            last = speed.keptUp();
        }
    }

    @Test
    void lessFitnessNeverPaysMoreTurns() {
        Random random = new Random(3);
        for (int i = 0; i < 100; i++) {
            Handling handling = new Handling(
                    new Handling.ControlRates(0.7, 0.3, 0.15, 0.09),
                    new Handling.Grinders(2, 150 + 150 * random.nextDouble(), 12_000, 1_420),
                    new Handling.SheetWork(0.01 * random.nextDouble(), 0.4 * random.nextDouble()),
                    0.6,
                    List.of(new Handling.OilUser("rakes", 100 * random.nextDouble(), 2_000 * random.nextDouble())),
                    null);
            double moment = 25_000 * random.nextDouble();
            int before = Integer.MAX_VALUE;
            for (double fitness : new double[] {1, 0.8, 0.6}) {
                PowerAccount account = PowerAccount.of(handling, 0.7, moment, 360, fitness);
                assertTrue(account.turns() <= before);
                assertTrue(!account.isShort() || account.turns() == 0);
                before = account.turns();
            }
        }
    }
}
