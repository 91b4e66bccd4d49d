package trimwright.course;

/**
 * A line that is crossed with its port end to port.
 *
 * @param portEnd left end for a boat that crosses as she should
 * @param starboardEnd right end
 */
public record Line(Position portEnd, Position starboardEnd) {}
