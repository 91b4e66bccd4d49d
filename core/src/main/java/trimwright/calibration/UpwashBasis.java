package trimwright.calibration;

import trimwright.air.ApparentWind;
import trimwright.wind.WindCorrection;

/** How the turn of the wind at the sensor goes with wind and trim, as a multiple of the typical one (-), positive from starboard. */
public sealed interface UpwashBasis {
    /** The typical upwash by the model (rad), 0 where no model is asked. */
    double typical();

    /**
     * Share of the typical upwash (-), signed.
     *
     * @param read what the sensor gives, from the bow, its own offset taken off
     * @param upwash the typical upwash that is tried (rad): the wind that the wing works in is turned back by it
     */
    double share(ApparentWind read, Set set, double upwash);

    /** How the wing is set (rad), signed. */
    record Set(double camber, double sheet, double twist) {}

    /**
     * Odd and straight in angle of attack, camber and twist: fitted to solutions of the wing model about the day's trims.
     *
     * @param typical (rad)
     * @param byAttack change with the wind's angle to the main element (-)
     * @param byCamber change with camber (-)
     * @param byTwist change with twist (-)
     * @param misfit root mean square of what the straight line leaves of the solutions (rad)
     */
    record OfModel(double typical, double byAttack, double byCamber, double byTwist, double misfit)
            implements UpwashBasis {
        @Override
        public double share(ApparentWind read, Set set, double upwash) {
            double times = upwash / typical;
            double whole = byAttack * (read.angle() - set.sheet()) + byCamber * set.camber() + byTwist * set.twist();
            // The wind read is bent already: what the wing meets is less by the upwash itself.
            return whole / typical / (1 + times * byAttack);
        }
    }

    /**
     * Without boat file or gauges of the wing: as the debrief's agreement of sensors has it, more in less wind.
     *
     * @param speed apparent wind for which it is 1 (m/s)
     */
    record OfWindAlone(double speed) implements UpwashBasis {
        @Override
        public double typical() {
            return 0;
        }

        @Override
        public double share(ApparentWind read, Set set, double upwash) {
            return WindCorrection.share(read, speed);
        }
    }
}
