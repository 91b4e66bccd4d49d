package trimwright.wing;

import org.jspecify.annotations.Nullable;
import trimwright.section.SectionPoint;

/** First-order change of the whole flow by one control. A workspace: each {@code solve} overwrites the last. */
final class FlowTangent {
    private final StripFlow flow;
    private final Influence influence;
    private final double downY;
    private final double downZ;
    private final double[] flap;
    private final double[] logRe;
    private final double[] vx;
    private final double[] vy;
    private final double[] alpha;
    private final double[] gamma;

    /** Direction of the air past each strip. */
    private final double[] alongX;

    private final double[] alongY;

    private @Nullable Moved moved;

    /** What held circulations make when wakes turn with the air or the image moves: dear, so made when first asked for. */
    private record Moved(InfluenceChange byAirAngle, InfluenceChange byHeel, InfluenceChange byFootHeight) {}

    FlowTangent(StripFlow flow) {
        this.flow = flow;
        influence = flow.influence;
        downY = StrictMath.sin(influence.placed.heel());
        downZ = StrictMath.cos(influence.placed.heel());
        flap = new double[flow.n];
        logRe = new double[flow.n];
        vx = new double[flow.n];
        vy = new double[flow.n];
        alpha = new double[flow.n];
        gamma = new double[flow.n];
        alongX = new double[flow.n];
        alongY = new double[flow.n];
        for (int i = 0; i < flow.n; i++) {
            alongX[i] = flow.vx[i] / flow.speed[i];
            alongY[i] = flow.vy[i] / flow.speed[i];
        }
    }

    private Moved moved() {
        Moved known = moved;
        if (known == null) {
            known = new Moved(
                    InfluenceChange.byAirAngle(influence),
                    InfluenceChange.byHeel(influence),
                    InfluenceChange.byFootHeight(influence));
            InfluenceChange.fill(flow.gamma, known.byAirAngle, known.byHeel, known.byFootHeight);
            moved = known;
        }
        return known;
    }

    void solve(WingControl control, LuFactors lu) {
        double turned = control == WingControl.SHEET ? -1 : 0;
        moveAir(control);
        boolean windMoves =
                control == WingControl.AIR_SPEED || control == WingControl.AIR_ANGLE || control == WingControl.HEEL;
        for (int i = 0; i < flow.n; i++) {
            logRe[i] = windMoves ? logReBy(i) : 0;
            flap[i] = flow.setting.flapAngleBy(control, flow.wing.flapShare(i));
        }
        InfluenceChange change = changeBy(control);
        if (change != null) {
            change.addTo(1, vx, vy);
        }
        settle(turned, lu);
    }

    /** The same for any mixture of trim, place and air. */
    void solve(WingChange change, LuFactors lu) {
        boolean windMoves = change.movesAir();
        for (int i = 0; i < flow.n; i++) {
            vx[i] = change.airX(i);
            vy[i] = change.airY(i);
            logRe[i] = windMoves ? logReBy(i) : 0;
            flap[i] = change.flapAngle(flow.setting, flow.wing.flapShare(i));
        }
        if (windMoves) {
            moved().byAirAngle.addTo(trailTurn(change), vx, vy);
        }
        if (change.heel() != 0) {
            moved().byHeel.addTo(change.heel(), vx, vy);
        }
        if (change.footHeight() != 0) {
            moved().byFootHeight.addTo(change.footHeight(), vx, vy);
        }
        settle(-change.sheet(), lu);
    }

    /**
     * By how much the common direction of the air along the sea turns about the sea's upright (rad), beyond what the wing's heel
     * makes of it.
     */
    private double trailTurn(WingChange change) {
        double downY = StrictMath.sin(influence.placed.heel());
        double downZ = StrictMath.cos(influence.placed.heel());
        double x = 0;
        double y = 0;
        double z = 0;
        double byX = 0;
        double byY = 0;
        double byZ = 0;
        for (int i = 0; i < flow.n; i++) {
            double area = flow.wing.stripChord(i) * flow.wing.stripWidth(i);
            x += area * flow.air.x(i);
            y += area * flow.air.y(i);
            z += area * flow.air.z(i);
            byX += area * change.airX(i);
            byY += area * change.airY(i);
            byZ += area * change.airZ(i);
        }
        double down = y * downY + z * downZ;
        double alongY = y - down * downY;
        double alongZ = z - down * downZ;
        double size = Math.sqrt(x * x + alongY * alongY + alongZ * alongZ);
        // The upright itself turns in the wing's axes: what of the air lay along it now lies along the sea.
        double tiltY = change.heel() * (-down * downZ - alongZ);
        double tiltZ = change.heel() * (down * downY + alongY);
        // down x trail
        double acrossX = downY * influence.uz - downZ * influence.uy;
        double acrossY = downZ * influence.ux;
        double acrossZ = -downY * influence.ux;
        return (acrossX * byX + acrossY * (byY + tiltY) + acrossZ * (byZ + tiltZ)) / size;
    }

    /** Circulations, speeds and angles of attack from the changes of air, wakes and flap so far. */
    private void settle(double turned, LuFactors lu) {
        for (int i = 0; i < flow.n; i++) {
            SectionPoint point = flow.point[i];
            double speed = flow.speed[i];
            double a = turned + across(i) / speed;
            double cl = point.clAlpha * a + point.clFlap * flap[i] + point.clLogRe * logRe[i];
            gamma[i] = 0.5 * flow.wing.stripChord(i) * (speed * cl + along(i) * point.cl);
            if (flow.mixingMargin[i] != 0) {
                gamma[i] += flow.mixingMargin[i] * flow.bend[i] * marginBy(point, a, i);
            }
        }
        lu.solve(gamma);
        influence.add(gamma, vx, vy);
        for (int i = 0; i < flow.n; i++) {
            alpha[i] = turned + across(i) / flow.speed[i];
        }
    }

    private double logReBy(int i) {
        double ax = flow.air.x(i);
        double ay = flow.air.y(i);
        return (ax * vx[i] + ay * vy[i]) / (ax * ax + ay * ay + StripFlow.STILL);
    }

    private double marginBy(SectionPoint point, double a, int i) {
        return point.stallMarginAlpha * a + point.stallMarginFlap * flap[i] + point.stallMarginLogRe * logRe[i];
    }

    /** Change of force and moment; fills in those of stall margin and hinge moment of each strip. */
    WingForce loads(double[] margin, double[] hinge) {
        Wing wing = flow.wing;
        double density = flow.air.state().density();
        double x = 0;
        double y = 0;
        double k = 0;
        double m = 0;
        double couple = 0;
        double flapShare = wing.flapChordRatio();
        for (int i = 0; i < flow.n; i++) {
            SectionPoint point = flow.point[i];
            double chord = wing.stripChord(i);
            double width = wing.stripWidth(i);
            double speed = flow.speed[i];
            double quicken = along(i);
            double a = alpha[i];
            double d = flap[i];
            double r = logRe[i];
            double cd = point.cdAlpha * a + point.cdFlap * d + point.cdLogRe * r;
            double cm = point.cmAlpha * a + point.cmFlap * d + point.cmLogRe * r;
            double ch = point.hingeAlpha * a + point.hingeFlap * d + point.hingeLogRe * r;
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
            double moment = half * chord * speed;
            couple -= moment * (2 * quicken * point.cm + speed * cm);
            hinge[i] = moment * flapShare * flapShare * (2 * quicken * point.hinge + speed * ch);
            margin[i] = marginBy(point, a, i);
        }
        return new WingForce(x, y, 0, k, m, couple);
    }

    /** Undisturbed air at each strip, seen from the wing. */
    private void moveAir(WingControl control) {
        for (int i = 0; i < flow.n; i++) {
            double ax = flow.air.x(i);
            double ay = flow.air.y(i);
            double az = flow.air.z(i);
            vx[i] = control == WingControl.AIR_SPEED ? ax : 0;
            vy[i] = control == WingControl.AIR_SPEED ? ay : control == WingControl.HEEL ? az : 0;
            if (control == WingControl.AIR_ANGLE) {
                // down x air
                vx[i] = downY * az - downZ * ay;
                vy[i] = downZ * ax;
            }
        }
    }

    /** What held circulations make when wakes turn with the air or the image moves. */
    private @Nullable InfluenceChange changeBy(WingControl control) {
        return switch (control) {
            case AIR_ANGLE -> moved().byAirAngle;
            case HEEL -> moved().byHeel;
            case FOOT_HEIGHT -> moved().byFootHeight;
            case SHEET, CAMBER, TWIST, TWIST_MID_RATIO, AIR_SPEED -> null;
        };
    }

    /** Change of a strip's velocity along itself: of its size. */
    private double along(int i) {
        return alongX[i] * vx[i] + alongY[i] * vy[i];
    }

    /** And across: of its direction, times its size. */
    private double across(int i) {
        return alongX[i] * vy[i] - alongY[i] * vx[i];
    }
}
