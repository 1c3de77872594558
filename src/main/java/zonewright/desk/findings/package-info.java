/** What is wrong in the design: looked for, listed, marked in the cells and put right. */
package zonewright.desk.findings;
