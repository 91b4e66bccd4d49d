package trimwright.motion;

import trimwright.boat.Boat;

/** What the foils of one side of a boat remember: the flow that their lift follows, and air on shaft and rudder. */
final class SideMemory {
    final LaggedFoil tip;
    final LaggedFoil shaft;
    final LaggedFoil strut;
    final LaggedFoil elevator;
    final StrutAir shaftAir;
    final StrutAir strutAir;

    /** Nothing yet. */
    SideMemory(Boat boat) {
        tip = new LaggedFoil(boat.mainFoil().tipChord());
        shaft = new LaggedFoil(boat.mainFoil().shaftChord());
        strut = new LaggedFoil(boat.rudder().shaftChord());
        elevator = new LaggedFoil(boat.rudder().elevatorChord());
        shaftAir = new StrutAir();
        strutAir = new StrutAir();
    }

    private SideMemory(SideMemory of) {
        tip = of.tip.copy();
        shaft = of.shaft.copy();
        strut = of.strut.copy();
        elevator = of.elevator.copy();
        shaftAir = of.shaftAir.copy();
        strutAir = of.strutAir.copy();
    }

    /** One that goes on from here by itself. */
    SideMemory copy() {
        return new SideMemory(this);
    }

    /** Forgets the flow of the step before, and air that was drawn down. */
    void forget() {
        tip.forget();
        shaft.forget();
        strut.forget();
        elevator.forget();
        shaftAir.forget();
        strutAir.forget();
    }

    /** Whether air stands on shaft or rudder. */
    boolean hasAir() {
        return shaftAir.isIn() || strutAir.isIn();
    }
}
