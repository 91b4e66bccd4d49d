package trimwright.wing;

import java.util.Random;
import trimwright.air.AirState;

/** A random state of wind, trim, heel and height. */
record RandomState(StripAir air, WingSetting setting, double heel, double footHeight) {
    /** Starboard tack, attached or not far from it. */
    static RandomState sailing(Random r, int strips) {
        double awa = Math.toRadians(10 + 30 * r.nextDouble());
        double sheet = awa - Math.toRadians(-6 + 22 * r.nextDouble());
        return make(r, strips, awa, sheet, 0.6 * r.nextDouble(), 0.6 * r.nextDouble());
    }

    static RandomState attached(Random r, int strips) {
        double awa = Math.toRadians(12 + 25 * r.nextDouble());
        double sheet = awa - Math.toRadians(-3 + 10 * r.nextDouble());
        return make(r, strips, awa, sheet, 0.4 * r.nextDouble(), 0.4 * r.nextDouble());
    }

    /** Anything: from astern, stalled, inverted. */
    static RandomState any(Random r, int strips) {
        return make(
                r,
                strips,
                Math.PI * (2 * r.nextDouble() - 1),
                0.8 * (2 * r.nextDouble() - 1),
                0.7 * (2 * r.nextDouble() - 1),
                0.7 * (2 * r.nextDouble() - 1));
    }

    private static RandomState make(Random r, int strips, double awa, double sheet, double camber, double twist) {
        double speed = 1 + 25 * r.nextDouble();
        double veer = 0.1 * (r.nextDouble() - 0.5);
        double shear = 0.2 * r.nextDouble();
        double[] x = new double[strips];
        double[] y = new double[strips];
        double[] z = new double[strips];
        double heel = 0.2 * (r.nextDouble() - 0.5);
        for (int i = 0; i < strips; i++) {
            double share = (i + 0.5) / strips;
            double u = speed * (1 + shear * (share - 0.5));
            double angle = awa + veer * (share - 0.5);
            x[i] = -u * Math.cos(angle);
            y[i] = -u * Math.sin(angle) * Math.cos(heel);
            z[i] = u * Math.sin(angle) * Math.sin(heel);
        }
        return new RandomState(
                new StripAir(x, y, z, AirState.STANDARD),
                new WingSetting(sheet, camber, twist, 0.3 + 0.4 * r.nextDouble()),
                heel,
                0.5 + 3 * r.nextDouble());
    }

    /** The state with one control changed. */
    RandomState moved(WingControl control, double by) {
        double sheet = setting.sheet();
        double camber = setting.camber();
        double twist = setting.twist();
        double mid = setting.twistMidRatio();
        return switch (control) {
            case SHEET -> set(new WingSetting(sheet + by, camber, twist, mid));
            case CAMBER -> set(new WingSetting(sheet, camber + by, twist, mid));
            case TWIST -> set(new WingSetting(sheet, camber, twist + by, mid));
            case TWIST_MID_RATIO -> set(new WingSetting(sheet, camber, twist, mid + by));
            case AIR_SPEED -> new RandomState(air.scaled(Math.exp(by)), setting, heel, footHeight);
            case AIR_ANGLE -> new RandomState(inBody(heel, by), setting, heel, footHeight);
            case HEEL -> new RandomState(inBody(heel + by, 0), setting, heel + by, footHeight);
            case FOOT_HEIGHT -> new RandomState(air, setting, heel, footHeight + by);
        };
    }

    private RandomState set(WingSetting other) {
        return new RandomState(air, other, heel, footHeight);
    }

    /** The level air, turned about the upright, in the axes of a body at a roll. */
    private StripAir inBody(double roll, double turned) {
        int n = air.strips();
        double[] x = new double[n];
        double[] y = new double[n];
        double[] z = new double[n];
        for (int i = 0; i < n; i++) {
            double levelX = air.x(i);
            double levelY = air.y(i) * Math.cos(heel) - air.z(i) * Math.sin(heel);
            double down = air.y(i) * Math.sin(heel) + air.z(i) * Math.cos(heel);
            x[i] = levelX * Math.cos(turned) - levelY * Math.sin(turned);
            double abeam = levelX * Math.sin(turned) + levelY * Math.cos(turned);
            y[i] = abeam * Math.cos(roll) + down * Math.sin(roll);
            z[i] = -abeam * Math.sin(roll) + down * Math.cos(roll);
        }
        return new StripAir(x, y, z, air.state());
    }
}
