package trimwright.segment;

import org.jspecify.annotations.Nullable;
import trimwright.course.CourseLeg;

/**
 * A leg of the course, from rounding to rounding; without a course file a span of one point of sail of 60 s or more
 * stands for it.
 *
 * @param kind point of sail: on a course that of the way from mark to mark in the leg's mean wind
 * @param course direction from mark to mark (rad); without a course from the place where it began to where it ended
 * @param distance between the two (m)
 * @param on the leg of the course, or null without one
 */
public record Leg(
        PointOfSail kind,
        Span span,
        double course,
        double distance,
        @Nullable CourseLeg on) implements Piece {}
