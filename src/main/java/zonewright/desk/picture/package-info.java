/**
 * Pictures of a design: what each shows, in words and in lines, for the window and for files.
 *
 * <p>A picture reads the design and draws; it calculates nothing of the trade. {@link
 * zonewright.desk.picture.Pictures} lists them all.
 */
package zonewright.desk.picture;
