/**
 * Keeps what was typed and not yet saved, so that a crash or a loss of power costs half a second of
 * it at most.
 *
 * <p>Beside each design lies a record of what was entered since it was saved. It goes with the next
 * saving; one that is left over is offered when the design is opened again.
 */
package zonewright.recovery;
