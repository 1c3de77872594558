/**
 * The expression tree: a formula is declared once and read many ways.
 *
 * <p>Its readings are the check of dimensions, the numbers of one unit system, the block evaluator,
 * the spreadsheet text, the worked explanation and the list of what it depends on. Knows nothing of
 * irrigation.
 */
package zonewright.formula;
