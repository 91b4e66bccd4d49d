package trimwright.compare;

import trimwright.segment.PointOfSail;
import trimwright.target.Target;
import trimwright.target.TargetBook;
import trimwright.target.TargetCaveat;
import trimwright.target.TargetLookup;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/**
 * The target book of the boat and wing.
 *
 * @param key the name in files: {@code target} for the model's book, {@code learned} for one that a season has corrected
 */
public record TargetReference(TargetBook book, String key) implements Reference {
    /** The model's book. */
    public TargetReference(TargetBook book) {
        this(book, "target");
    }

    /** A book that a season has corrected. */
    public static TargetReference learned(TargetBook book) {
        return new TargetReference(book, "learned");
    }

    @Override
    public Rate rate(PointOfSail on, double tws, double twaToMark) {
        TargetLookup lookup = lookup(on, tws, twaToMark);
        Target target = lookup.target();
        if (target == null) {
            return Rate.NONE;
        }
        double value = on.isJudgedByVmg() ? target.velocityMadeGood() : target.boatSpeed();
        return new Rate(value, isDoubtful(lookup));
    }

    /** A target that a boat only holds once it foils is no doubtful one. */
    private static boolean isDoubtful(TargetLookup lookup) {
        return lookup.caveats().stream().anyMatch(caveat -> caveat != TargetCaveat.NOT_REACHED_BY_ITSELF);
    }

    @Override
    public double rateAtAngle(PointOfSail on, double tws, double courseTwa, double offMark) {
        Target target = book.find(tws, courseTwa).target();
        if (target == null) {
            return Double.NaN;
        }
        double towards = on.isJudgedByVmg() ? on.windwardSign() * StrictMath.cos(courseTwa) : StrictMath.cos(offMark);
        return target.boatSpeed() * towards;
    }

    /** Speed at an instant over the target's in that wind at that angle (-), NaN where one of them is not known. */
    public double shareOfTarget(WindTrack track, int i) {
        double wind = track.get(Quantity.TWS, i);
        double angle = track.get(Quantity.COURSE_TWA, i);
        if (Double.isNaN(wind) || Double.isNaN(angle)) {
            return Double.NaN;
        }
        Target target = book.find(wind, angle).target();
        return target == null ? Double.NaN : track.get(Quantity.SPEED, i) / target.boatSpeed();
    }

    private TargetLookup lookup(PointOfSail on, double tws, double twaToMark) {
        return switch (on) {
            case UPWIND -> book.findUpwind(tws);
            case DOWNWIND -> book.findDownwind(tws);
            case REACHING -> book.find(tws, twaToMark);
        };
    }
}
