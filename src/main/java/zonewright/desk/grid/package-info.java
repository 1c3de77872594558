/**
 * Tables of a book as a grid one types into, with the manners of a spreadsheet.
 *
 * <p>Nothing is calculated here: cells show what the book says, and what a person does becomes an
 * edit of the book.
 */
package zonewright.desk.grid;
