package zonewright.equation;

import java.util.LinkedHashMap;
import java.util.Map;

/** The functions there are, for whoever explains them. */
public final class FunctionList {
  private FunctionList() {}

  /** Returns how each function is written, with what it gives, in the order of the help. */
  public static Map<String, String> forms() {
    Map<String, String> forms = new LinkedHashMap<>();
    for (Functions.Known function : Functions.Known.values()) {
      forms.put(function.form(), function.gives());
    }
    return forms;
  }
}
