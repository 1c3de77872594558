package zonewright.sheet;

import java.util.Set;

/**
 * Which tables and columns a book has. Most are declared; others follow from what is entered in
 * some of its tables, and come and go with edits of those.
 */
public interface SchemaSource {
  /** Returns the tables and columns that are always there, all that takes entries among them. */
  Schema declared();

  /** Returns the identifiers of the tables whose entries say what else there is. */
  Set<String> definedBy();

  /**
   * Returns the tables and columns there are.
   *
   * @param entered what the tables of {@link #definedBy} hold
   * @return those declared, in their places, and the others behind them; an equal one, best the
   *     very same, where the same follows. It never refuses: what is entered wrongly defines
   *     nothing
   */
  Schema schema(BookSnapshot entered);

  /** Returns the source of a schema that follows from nothing. */
  static SchemaSource always(Schema schema) {
    return new SchemaSource() {
      @Override
      public Schema declared() {
        return schema;
      }

      @Override
      public Set<String> definedBy() {
        return Set.of();
      }

      @Override
      public Schema schema(BookSnapshot entered) {
        return schema;
      }
    };
  }
}
