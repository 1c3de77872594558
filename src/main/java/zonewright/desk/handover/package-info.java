/** What leaves the window: packs, pages to print, cards, proposals and calendars. */
package zonewright.desk.handover;
