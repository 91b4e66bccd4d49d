package trimwright.foil;

import trimwright.units.Units;
import trimwright.water.Wetting;

/** All that lies between the flow at a {@link SubmergedFoil} and its load. */
final class SubmergedState {
    /** Depth over chord from which the foil counts as fully wetted (-); Benson and Land: abrupt losses above 0.5. */
    private static final double FULLY_WETTED = 0.5;

    /** Keeps the depth Froude number finite at the surface (m), chosen. */
    private static final double DEPTH_FLOOR = 0.02;

    private final SubmergedFoil foil;
    private final Flow flow;
    final double un;
    final double across;
    final double speed;
    final double wet;
    final double depth;
    final double lambda;
    private final EllipticIntegrals integrals;
    final double sigma;
    final double froude;
    final double liftFactor;
    private final double sinAngle;
    private final double cosAngle;
    final double safe;
    final LiftState lift;
    final double beta;
    final double dragFactor;
    final double cd;
    final double area;
    /** Lift and drag over speed, so that no direction is needed at rest. */
    final double liftOverSpeed;

    final double dragOverSpeed;

    SubmergedState(SubmergedFoil foil, Flow flow, double incidence) {
        this.foil = foil;
        this.flow = flow;
        FoilShape shape = foil.shape;
        double density = foil.water.density();
        // Normal of the span's plane, upward: (0, sideSin, -cos). Only the flow across the span lifts.
        un = flow.v() * foil.sideSin - flow.w() * foil.cos;
        double across2 = flow.u() * flow.u() + un * un;
        across = Math.sqrt(across2);
        double alongSpan = flow.v() * foil.cos + flow.w() * foil.sideSin;
        speed = Math.sqrt(across2 + alongSpan * alongSpan);
        double q = 0.5 * density * across2;

        wet = Wetting.fraction(flow.depth(), FULLY_WETTED * shape.chord());
        depth = Wetting.length(flow.depth(), DEPTH_FLOOR) + DEPTH_FLOOR * (1 - wet);
        lambda = 2 * depth / shape.span();
        integrals = FreeSurface.biplaneIntegrals(lambda);
        sigma = FreeSurface.biplaneFactor(lambda, integrals);
        froude = across / Math.sqrt(Units.G * depth);
        liftFactor = FreeSurface.liftFactor(depth / shape.chord(), froude);
        double slope = FreeSurface.liftSlope(foil.aspectRatio, liftFactor, sigma);

        double angle = incidence + shape.zeroLiftAngle();
        sinAngle = StrictMath.sin(angle);
        cosAngle = StrictMath.cos(angle);
        safe = across + 1e-9;
        double sine = (-flow.u() * sinAngle + un * cosAngle) / safe;
        double cosine = -(flow.u() * cosAngle + un * sinAngle) / safe;
        lift = new LiftState(sine, cosine, slope, q, shape.thicknessRatio(), depth, foil.water);

        beta = FreeSurface.waveNumber(shape.span(), across);
        dragFactor = FreeSurface.dragFactor(lambda, sigma, beta);
        cd = SectionDrag.profile(reynolds(), shape.thicknessRatio(), offDesign())
                + lift.cl * lift.cl / (Math.PI * foil.aspectRatio) * dragFactor
                + lift.addedDrag();
        area = shape.area() * wet;
        liftOverSpeed = 0.5 * density * across * area * lift.cl;
        dragOverSpeed = 0.5 * density * speed * area * cd;
    }

    private double reynolds() {
        return speed * foil.shape.chord() / foil.water.kinematicViscosity();
    }

    private double offDesign() {
        return lift.cl - foil.shape.designLiftCoefficient();
    }

    void putInto(FoilLoad out) {
        double up = -liftOverSpeed * flow.u();
        out.setForce(
                dragOverSpeed * flow.u() + liftOverSpeed * un,
                dragOverSpeed * flow.v() + up * foil.sideSin,
                dragOverSpeed * flow.w() - up * foil.cos);
        out.setPoint(foil.x(), foil.y(), foil.z());
        out.setLoads(lift.q * area * lift.cl, dragOverSpeed * speed, lift.cl * wet);
        out.setUse(Math.abs(lift.asked) / lift.ceiling * wet, lift.cavitation * wet, 0);
    }

    /** First-order change of the load with changes of flow and incidence (rad). */
    void change(FlowChange by, double byIncidence, LiftState.Change lifts, FoilChange out) {
        FoilShape shape = foil.shape;
        double density = foil.water.density();
        double byUn = by.v() * foil.sideSin - by.w() * foil.cos;
        double byAcross = (flow.u() * by.u() + un * byUn) / safe;
        double bySpeed = (flow.u() * by.u() + flow.v() * by.v() + flow.w() * by.w()) / (speed + 1e-9);
        double byQ = density * across * byAcross;
        double byWet = Wetting.fractionSlope(flow.depth(), FULLY_WETTED * shape.chord()) * by.depth();
        double byDepth = Wetting.lengthSlope(flow.depth(), DEPTH_FLOOR) * by.depth() - DEPTH_FLOOR * byWet;
        double byLambda = 2 * byDepth / shape.span();
        double bySigma = FreeSurface.biplaneSlope(lambda, integrals) * byLambda;
        double byFroude = byAcross / Math.sqrt(Units.G * depth) - 0.5 * froude * byDepth / depth;
        double byFactor =
                FreeSurface.liftFactorChange(depth / shape.chord(), froude, byDepth / shape.chord(), byFroude);
        double bySlope = FreeSurface.liftSlopeChange(foil.aspectRatio, liftFactor, sigma, byFactor, bySigma);
        double bySine =
                (-by.u() * sinAngle + byUn * cosAngle - lift.sine * byAcross) / safe + lift.cosine * byIncidence;
        double byCosine =
                -(by.u() * cosAngle + byUn * sinAngle + lift.cosine * byAcross) / safe - lift.sine * byIncidence;
        lifts.of(lift, bySine, byCosine, bySlope, byQ, byDepth);

        double byBeta = FreeSurface.waveNumberSlope(shape.span(), across) * byAcross;
        double byDragFactor = FreeSurface.dragFactorChange(lambda, sigma, beta, byLambda, bySigma, byBeta);
        double byRe = bySpeed * shape.chord() / foil.water.kinematicViscosity();
        double byCd = SectionDrag.profileChange(reynolds(), shape.thicknessRatio(), offDesign(), byRe, lifts.cl)
                + lift.cl * (2 * lifts.cl * dragFactor + lift.cl * byDragFactor) / (Math.PI * foil.aspectRatio)
                + lifts.addedDrag;
        double byArea = shape.area() * byWet;
        double byLift = 0.5 * density * (byAcross * area * lift.cl + across * (byArea * lift.cl + area * lifts.cl));
        double byDrag = 0.5 * density * (bySpeed * area * cd + speed * (byArea * cd + area * byCd));
        double byUp = -byLift * flow.u() - liftOverSpeed * by.u();
        out.setForce(
                byDrag * flow.u() + dragOverSpeed * by.u() + byLift * un + liftOverSpeed * byUn,
                byDrag * flow.v() + dragOverSpeed * by.v() + byUp * foil.sideSin,
                byDrag * flow.w() + dragOverSpeed * by.w() - byUp * foil.cos);
        out.setLoads(
                byQ * area * lift.cl + lift.q * (byArea * lift.cl + area * lifts.cl), lifts.cl * wet + lift.cl * byWet);
        out.setUse(
                lifts.stallRatio(lift) * wet + Math.abs(lift.asked) / lift.ceiling * byWet,
                lifts.cavitation * wet + lift.cavitation * byWet,
                0);
    }
}
