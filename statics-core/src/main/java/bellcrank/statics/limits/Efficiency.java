package bellcrank.statics.limits;

import bellcrank.statics.equilibrium.Answer;

/**
 * How much of the work that goes in comes out between an effort and a resistance, with friction at
 * its limit against the motion. Forward, the effort is about to overcome the resistance: what is
 * useful is the work on the resistance, and the efficiency is the actual advantage over the ideal
 * one, at the greatest effort that the device can bear at rest. Back, the resistance is about to
 * drive the effort, at the least effort. The work of other loads, such as the weight of a lever,
 * counts as not useful; so only without such loads does the efficiency of a device without friction
 * equal 1. Static friction counts, unless the limits are those of moving parts. Source: work of
 * simple machines, any textbook of statics; from memory.
 *
 * @param forward share of the effort's work that is done on the resistance, a number above 0; it
 *     says why if there is none
 * @param back share of the resistance's work that comes back at the effort; negative if the effort
 *     has to help, since the device holds the resistance by itself; it says why if there is none
 * @param gap bound on how far the two may be too favourable because dry pins are closed in from two
 *     sides; 0 where they are exact but for rounding
 * @param frictionless whether no part has friction or losses, so that both shares are those of
 *     other loads alone
 */
public record Efficiency(Answer forward, Answer back, double gap, boolean frictionless) {}
