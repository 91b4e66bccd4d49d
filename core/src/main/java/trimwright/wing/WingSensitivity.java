package trimwright.wing;

import trimwright.section.SectionPoint;

/**
 * Derivatives of a solved wing's force, moment and stall margin by its controls, exact at the solution (implicit function
 * theorem on the converged equations). The strip with the least margin is held.
 */
public final class WingSensitivity {
    private final WingForce[] force;
    private final double[] stallMargin;

    private WingSensitivity(WingForce[] force, double[] stallMargin) {
        this.force = force;
        this.stallMargin = stallMargin;
    }

    /** Derivative of force and moment (N, N m per unit of the control). */
    public WingForce forceBy(WingControl control) {
        return force[control.ordinal()];
    }

    /** Derivative of the least stall margin (rad per unit of the control). */
    public double stallMarginBy(WingControl control) {
        return stallMargin[control.ordinal()];
    }

    static WingSensitivity at(PlacedWing placed, StripAir air, WingSetting setting, WingSolved solved) {
        WingControl[] controls = WingControl.values();
        WingForce[] force = new WingForce[controls.length];
        double[] margin = new double[controls.length];
        if (solved.trail(0) == 0 && solved.trail(1) == 0 && solved.trail(2) == 0) {
            java.util.Arrays.fill(force, WingForce.NONE); // still air
            return new WingSensitivity(force, margin);
        }
        Influence influence = Influence.of(placed, solved.trail(0), solved.trail(1), solved.trail(2));
        StripFlow flow = new StripFlow(placed.wing(), air, setting, influence);
        System.arraycopy(solved.circulations(), 0, flow.gamma, 0, flow.n);
        flow.update();
        LuFactors lu = new LuFactors(flow.n);
        flow.jacobian(lu.matrix());
        if (!lu.factor()) {
            throw new IllegalStateException("the wing's equations are singular at a solved state");
        }
        Tangent tangent = new Tangent(flow);
        for (WingControl control : controls) {
            tangent.solve(control, lu);
            force[control.ordinal()] = tangent.force();
            margin[control.ordinal()] = tangent.stallMargin(solved.stallStrip());
        }
        return new WingSensitivity(force, margin);
    }

    /** First-order change of the whole flow by one control. */
    private static final class Tangent {
        private final StripFlow flow;
        private final double[] gamma;
        private final double[] flap;
        private final double[] alpha;
        private final double[] vx;
        private final double[] vy;
        private double logRe;

        Tangent(StripFlow flow) {
            this.flow = flow;
            gamma = new double[flow.n];
            flap = new double[flow.n];
            alpha = new double[flow.n];
            vx = new double[flow.n];
            vy = new double[flow.n];
        }

        void solve(WingControl control, LuFactors lu) {
            boolean wind = control == WingControl.AIR_SPEED;
            logRe = wind ? 1 : 0;
            for (int i = 0; i < flow.n; i++) {
                double share = flow.wing.stripHeight(i) / flow.wing.span();
                flap[i] = flapBy(control, share);
                vx[i] = wind ? flow.air.x(i) : 0;
                vy[i] = wind ? flow.air.y(i) : 0;
                alpha[i] = (control == WingControl.SHEET ? -1 : 0) + turn(i);
                SectionPoint point = flow.point[i];
                double cl = point.clAlpha * alpha[i] + point.clFlap * flap[i] + point.clLogRe * logRe;
                gamma[i] = 0.5 * flow.wing.stripChord(i) * (flow.speed[i] * cl + quicken(i) * point.cl)
                        + flow.mixingMargin[i] * flow.bend[i] * stallMargin(i);
            }
            lu.solve(gamma);
            for (int i = 0; i < flow.n; i++) {
                double x = 0;
                double y = 0;
                int at = i * flow.n;
                for (int j = 0; j < flow.n; j++) {
                    x += flow.influence.x[at + j] * gamma[j];
                    y += flow.influence.y[at + j] * gamma[j];
                }
                vx[i] += x;
                vy[i] += y;
                alpha[i] = (control == WingControl.SHEET ? -1 : 0) + turn(i);
            }
        }

        WingForce force() {
            Wing wing = flow.wing;
            double density = flow.air.state().density();
            double x = 0;
            double y = 0;
            double k = 0;
            double m = 0;
            double couple = 0;
            for (int i = 0; i < flow.n; i++) {
                SectionPoint point = flow.point[i];
                double chord = wing.stripChord(i);
                double width = wing.stripWidth(i);
                double speed = flow.speed[i];
                double quicken = quicken(i);
                double cd = point.cdAlpha * alpha[i] + point.cdFlap * flap[i] + point.cdLogRe * logRe;
                double cm = point.cmAlpha * alpha[i] + point.cmFlap * flap[i] + point.cmLogRe * logRe;
                double lift = density * flow.gamma[i] * width;
                double liftBy = density * gamma[i] * width;
                double half = 0.5 * density * chord * width;
                double drag = half * speed * point.cd;
                double dragBy = half * (quicken * point.cd + speed * cd);
                double fx = -liftBy * flow.vy[i] - lift * vy[i] + dragBy * flow.vx[i] + drag * vx[i];
                double fy = liftBy * flow.vx[i] + lift * vx[i] + dragBy * flow.vy[i] + drag * vy[i];
                x += fx;
                y += fy;
                k += wing.stripHeight(i) * fy;
                m -= wing.stripHeight(i) * fx;
                couple -= half * chord * speed * (2 * quicken * point.cm + speed * cm);
            }
            return new WingForce(x, y, 0, k, m, couple);
        }

        double stallMargin(int strip) {
            SectionPoint point = flow.point[strip];
            return point.stallMarginAlpha * alpha[strip]
                    + point.stallMarginFlap * flap[strip]
                    + point.stallMarginLogRe * logRe;
        }

        private double flapBy(WingControl control, double share) {
            if (control == WingControl.CAMBER) {
                return 1;
            }
            if (control == WingControl.TWIST) {
                return -flow.setting.twistShare(share);
            }
            return control == WingControl.TWIST_MID_RATIO
                    ? -flow.setting.twist() * WingSetting.twistShareByMid(share)
                    : 0;
        }

        private double quicken(int i) {
            return (flow.vx[i] * vx[i] + flow.vy[i] * vy[i]) / flow.speed[i];
        }

        private double turn(int i) {
            return (flow.vx[i] * vy[i] - flow.vy[i] * vx[i]) / (flow.speed[i] * flow.speed[i]);
        }
    }
}
