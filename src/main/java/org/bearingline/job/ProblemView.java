package org.bearingline.job;

/**
 * What is wrong with a request.
 *
 * @param sentence what is wrong and what to do
 * @param spoken the same with its place, as a command says it
 * @param field JSON pointer into the job, or {@code files/NAME}; null where no field is at fault
 * @param part the part it concerns; null where none is known
 * @param place as the sentence names it; null for nowhere
 */
public record ProblemView(
    String sentence, String spoken, String field, String part, String place) {}
