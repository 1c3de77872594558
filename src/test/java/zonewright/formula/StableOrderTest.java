package zonewright.formula;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import zonewright.units.QuantityKind;

/** The library's own sort is the measure. */
class StableOrderTest {
  private static final Reference NUMBERS =
      new Reference("rows", "number", "Number", QuantityKind.COUNT);

  @Provide
  Arbitrary<List<Double>> numbers() {
    return Arbitraries.of(0.0, 1.0, 1.0 + 0x1p-50, 2.5, -3.0, 1e9, Double.NaN)
        .list()
        .ofMaxSize(120);
  }

  @Property
  void sortsAsTheLibraryDoes(@ForAll("numbers") List<Double> list, @ForAll boolean rising) {
    double[] numbers = list.stream().mapToDouble(Double::doubleValue).toArray();

    assertThat(StableOrder.of(numbers, rising)).isEqualTo(byLibrary(numbers, rising));
  }

  @Property
  void sortsAgainAfterSomeNumbersChanged(
      @ForAll("numbers") List<Double> list,
      @ForAll boolean rising,
      @ForAll @IntRange(max = 12) int changes,
      @ForAll long seed) {
    double[] numbers = list.stream().mapToDouble(Double::doubleValue).toArray();
    int[] before = StableOrder.of(numbers, rising);
    double[] were = IntStream.of(before).mapToDouble(at -> numbers[at]).toArray();
    Random random = new Random(seed);
    for (int i = 0; i < changes && numbers.length > 0; i++) {
      numbers[random.nextInt(numbers.length)] = random.nextInt(4);
    }

    assertThat(StableOrder.again(numbers, rising, before, were))
        .isEqualTo(byLibrary(numbers, rising));
  }

  @Property
  void rowsHeldAgainstTheirOwnGroupGetWhatEachWouldBeTold(
      @ForAll("numbers") List<Double> list, @ForAll zonewright.formula.Comparator comparator) {
    BlockColumn column = new BlockColumn();
    column.resize(list.size());
    for (int row = 0; row < list.size(); row++) {
      column.set(row, list.get(row));
    }
    int[] rows = IntStream.range(0, list.size()).toArray();
    Matching.Limit limit =
        Matching.rowsWith(NUMBERS, comparator, new Formula.Cell(NUMBERS)).limit().orElseThrow();
    WhereGroup group = WhereGroup.of(WhereKind.SUM, column, rows, column, limit, Optional.empty());
    double[] beside = new double[list.size()];

    group.withinOwn(beside);

    assertThat(beside).isEqualTo(list.stream().mapToDouble(group::within).toArray());
  }

  private static int[] byLibrary(double[] numbers, boolean rising) {
    Comparator<Integer> order = Comparator.comparingDouble(at -> numbers[at]);
    return IntStream.range(0, numbers.length)
        .boxed()
        .sorted(rising ? order : order.reversed())
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
