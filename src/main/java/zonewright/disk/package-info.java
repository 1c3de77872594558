/**
 * How files come to stand on a disk so that neither a crash nor a loss of power leaves half of one,
 * who may read them, and which of them somebody is working on. Knows nothing of what is in them.
 */
package zonewright.disk;
