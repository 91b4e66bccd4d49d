package trimwright.wing;

import trimwright.section.SectionPoint;

/** Sums the strips' forces and moments of a converged flow. */
final class WingLoads {
    private WingLoads() {}

    static WingSolved of(StripFlow flow, int iterations) {
        Wing wing = flow.wing;
        int n = flow.n;
        double density = flow.air.state().density();
        double[] cl = new double[n];
        double[] cd = new double[n];
        double[] margin = new double[n];
        double[] hinge = new double[n];
        double x = 0;
        double y = 0;
        double k = 0;
        double m = 0;
        double couple = 0;
        double induced = 0;
        double profile = 0;
        int stallStrip = 0;
        for (int i = 0; i < n; i++) {
            SectionPoint point = flow.point[i];
            cl[i] = point.cl;
            cd[i] = point.cd;
            margin[i] = point.stallMargin;
            if (margin[i] < margin[stallStrip]) {
                stallStrip = i;
            }
            double chord = wing.stripChord(i);
            double width = wing.stripWidth(i);
            double height = wing.stripHeight(i);
            // Kutta-Joukowski across the local stream, profile drag along it.
            double lift = density * flow.gamma[i] * width;
            double drag = 0.5 * density * flow.speed[i] * chord * width * point.cd;
            double liftX = -lift * flow.vy[i];
            double liftY = lift * flow.vx[i];
            double dragX = drag * flow.vx[i];
            double dragY = drag * flow.vy[i];
            x += liftX + dragX;
            y += liftY + dragY;
            k += height * (liftY + dragY);
            m -= height * (liftX + dragX);
            // A section's nose-up couple turns the nose to port on starboard tack: against yaw.
            couple -= 0.5 * density * flow.speed[i] * flow.speed[i] * chord * chord * width * point.cm;
            double flapChord = wing.flapChordRatio() * chord;
            hinge[i] = 0.5 * density * flow.speed[i] * flow.speed[i] * flapChord * flapChord * width * point.hinge;
            double ax = flow.air.x(i);
            double ay = flow.air.y(i);
            double a = Math.sqrt(ax * ax + ay * ay);
            if (a > 0) {
                induced += (liftX * ax + liftY * ay) / a;
                profile += (dragX * ax + dragY * ay) / a;
            }
        }
        return new WingSolved(
                wing,
                flow,
                new WingForce(x, y, 0, k, m, couple),
                induced,
                profile,
                stallStrip,
                iterations,
                flow.gamma,
                flow.flap,
                cl,
                cd,
                margin,
                hinge);
    }
}
