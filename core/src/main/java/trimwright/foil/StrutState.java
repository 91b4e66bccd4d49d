package trimwright.foil;

import trimwright.units.Units;
import trimwright.water.Wetting;

/** All that lies between the flow at a {@link SurfaceStrut} and its load. */
final class StrutState {
    private final SurfaceStrut strut;
    private final Flow flow;
    private final double across;
    private final double safe;
    private final double speed;
    private final double length;
    private final double wet;
    private final double covered;
    private final double froude2;
    private final double wall;
    private final double efficiency;
    private final double aspectRatio;
    private final double root;
    private final LiftState lift;
    private final double cd;
    private final double sprayArea;
    private final double dragArea;
    private final double area;
    private final double liftOverSpeed;
    private final double dragOverSpeed;
    private final double centre;
    private final double froude;
    private final double vapourNumber;
    private final double inception;

    StrutState(SurfaceStrut strut, Flow flow) {
        this(strut, flow, 1);
    }

    /** @param kept share of the lift slope that is left (-): less than 1 where air has come down the strut */
    StrutState(SurfaceStrut strut, Flow flow, double kept) {
        this.strut = strut;
        this.flow = flow;
        StrutShape shape = strut.shape;
        double density = strut.water.density();
        double across2 = flow.u() * flow.u() + flow.v() * flow.v();
        across = Math.sqrt(across2);
        speed = Math.sqrt(across2 + flow.w() * flow.w());
        double q = 0.5 * density * across2;

        length = strut.wettedLength(flow.depth());
        wet = Wetting.fraction(flow.depth(), SurfaceStrut.EDGE);
        covered = Wetting.fraction(flow.depth() - shape.length() + SurfaceStrut.EDGE, SurfaceStrut.EDGE);
        froude2 = across2 / (Units.G * (length + SurfaceStrut.LENGTH_FLOOR));
        // Slow water is a wall; the fourth power is chosen, it makes the change at a depth Froude number of 1.
        wall = covered + (1 - covered) / (1 + froude2 * froude2);
        efficiency = shape.efficiency() + (SurfaceStrut.WALL - shape.efficiency()) * wall;
        aspectRatio = efficiency * (length + SurfaceStrut.LENGTH_FLOOR * (1 - wet)) / shape.chord();
        root = Math.sqrt(aspectRatio * aspectRatio + 4);
        double slope = kept * 2 * Math.PI * aspectRatio / (2 + root);

        safe = across + 1e-9;
        lift = new LiftState(
                flow.v() / safe, -flow.u() / safe, slope, q, shape.thicknessRatio(), 0.5 * length, strut.water);
        cd = SectionDrag.profile(reynolds(), shape.thicknessRatio(), lift.cl)
                + lift.cl * lift.cl / (Math.PI * aspectRatio)
                + lift.addedDrag();
        sprayArea = SectionDrag.sprayArea(shape.thicknessRatio() * shape.chord());
        area = length * shape.chord();
        dragArea = area * cd + wet * shape.jointArea() + wet * (1 - covered) * sprayArea;
        liftOverSpeed = 0.5 * density * across * area * lift.cl;
        dragOverSpeed = 0.5 * density * speed * dragArea;
        centre = SurfaceStrut.CENTRE_FAST + (SurfaceStrut.CENTRE_WALL - SurfaceStrut.CENTRE_FAST) * wall;
        froude = Math.sqrt(froude2) + 1e-9;
        vapourNumber = strut.water.pressureAboveVapour(0) / (q + 1e-9);
        inception = Ventilation.inceptionLift(vapourNumber, froude);
    }

    private double reynolds() {
        return speed * strut.shape.chord() / strut.water.kinematicViscosity();
    }

    void putInto(FoilLoad out) {
        out.setForce(
                dragOverSpeed * flow.u() + liftOverSpeed * flow.v(),
                dragOverSpeed * flow.v() - liftOverSpeed * flow.u(),
                dragOverSpeed * flow.w());
        out.setPoint(strut.x(), strut.y(), strut.shape.length() - length * (1 - centre));
        out.setLoads(lift.q * area * lift.cl, dragOverSpeed * speed, lift.cl * wet);
        out.setUse(
                Math.abs(lift.asked) / lift.ceiling * wet,
                lift.cavitation * wet,
                Math.abs(lift.cl) / inception * wet * (1 - covered));
    }

    /** First-order change of the load with that of the flow. */
    void change(FlowChange by, LiftState.Change lifts, FoilChange out) {
        StrutShape shape = strut.shape;
        double density = strut.water.density();
        double byAcross = (flow.u() * by.u() + flow.v() * by.v()) / safe;
        double bySpeed = (flow.u() * by.u() + flow.v() * by.v() + flow.w() * by.w()) / (speed + 1e-9);
        double byQ = density * across * byAcross;
        double byLength = strut.wettedLengthSlope(flow.depth()) * by.depth();
        double byWet = Wetting.fractionSlope(flow.depth(), SurfaceStrut.EDGE) * by.depth();
        double byCovered = Wetting.fractionSlope(flow.depth() - shape.length() + SurfaceStrut.EDGE, SurfaceStrut.EDGE)
                * by.depth();
        double byFroude2 = 2 * across * byAcross / (Units.G * (length + SurfaceStrut.LENGTH_FLOOR))
                - froude2 * byLength / (length + SurfaceStrut.LENGTH_FLOOR);
        double fast = 1 + froude2 * froude2;
        double byWall = byCovered * (1 - 1 / fast) - (1 - covered) * 2 * froude2 * byFroude2 / (fast * fast);
        double byEfficiency = (SurfaceStrut.WALL - shape.efficiency()) * byWall;
        double byAspect = (byEfficiency * (length + SurfaceStrut.LENGTH_FLOOR * (1 - wet))
                        + efficiency * (byLength - SurfaceStrut.LENGTH_FLOOR * byWet))
                / shape.chord();
        double bySlope = 4 * Math.PI / (root * (2 + root)) * byAspect;
        lifts.of(
                lift,
                (by.v() - lift.sine * byAcross) / safe,
                -(by.u() + lift.cosine * byAcross) / safe,
                bySlope,
                byQ,
                0.5 * byLength);

        double byRe = bySpeed * shape.chord() / strut.water.kinematicViscosity();
        double byCd = SectionDrag.profileChange(reynolds(), shape.thicknessRatio(), lift.cl, byRe, lifts.cl)
                + lift.cl * (2 * lifts.cl - lift.cl * byAspect / aspectRatio) / (Math.PI * aspectRatio)
                + lifts.addedDrag;
        double byArea = byLength * shape.chord();
        double byDragArea = byArea * cd
                + area * byCd
                + byWet * (shape.jointArea() + (1 - covered) * sprayArea)
                - wet * byCovered * sprayArea;
        double byLift = 0.5 * density * (byAcross * area * lift.cl + across * (byArea * lift.cl + area * lifts.cl));
        double byDrag = 0.5 * density * (bySpeed * dragArea + speed * byDragArea);
        out.setForce(
                byDrag * flow.u() + dragOverSpeed * by.u() + byLift * flow.v() + liftOverSpeed * by.v(),
                byDrag * flow.v() + dragOverSpeed * by.v() - byLift * flow.u() - liftOverSpeed * by.u(),
                byDrag * flow.w() + dragOverSpeed * by.w());
        double byCentre = (SurfaceStrut.CENTRE_WALL - SurfaceStrut.CENTRE_FAST) * byWall;
        out.setPoint(-byLength * (1 - centre) + length * byCentre);
        out.setLoads(
                byQ * area * lift.cl + lift.q * (byArea * lift.cl + area * lifts.cl), lifts.cl * wet + lift.cl * byWet);
        double byFroude = 0.5 * byFroude2 / froude;
        double byVapour = -vapourNumber * byQ / (lift.q + 1e-9);
        double byInception = Ventilation.inceptionLiftChange(vapourNumber, froude, byVapour, byFroude);
        double use = Math.abs(lift.cl) / inception;
        double byUse = (Math.signum(lift.cl) * lifts.cl - use * byInception) / inception;
        out.setUse(
                lifts.stallRatio(lift) * wet + Math.abs(lift.asked) / lift.ceiling * byWet,
                lifts.cavitation * wet + lift.cavitation * byWet,
                byUse * wet * (1 - covered) + use * (byWet * (1 - covered) - wet * byCovered));
    }
}
