package zonewright.desk.grid;

import zonewright.sheet.Column;

/**
 * A line of a form.
 *
 * @param band the group it stands in
 * @param column what is asked; of a table with several rows it is answered for all of them
 * @param words what stands beside the answer
 */
public record FormQuestion(String band, Column column, String words) {}
