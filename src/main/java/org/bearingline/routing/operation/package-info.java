/**
 * The operations of one part: each with its own bit, follower, face and depth, and the plan of
 * templates that makes them all. Positions are the part's own, seen from face A through the wood,
 * also for what is worked from face B; millimetres and degrees. Read {@link
 * org.bearingline.routing.operation.Operation} and {@link
 * org.bearingline.routing.operation.OperationPlan} first.
 */
package org.bearingline.routing.operation;
