package zonewright.estimate;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * An estimate kept by hand in decimal money: random items and extras, some priced in another
 * currency, and what they come to with every amount rounded to the smallest amount of a currency,
 * halves up.
 */
final class Ledger {
  private static final String[] KINDS = {
    Extras.EQUIPMENT, Extras.SUBCONTRACT, Extras.ALLOWANCE, Extras.ALTERNATE
  };

  /** One item: all numbers as they are typed. */
  record Item(
      BigDecimal count,
      BigDecimal amount,
      BigDecimal wastePercent,
      BigDecimal pack,
      BigDecimal price,
      BigDecimal hoursEach,
      boolean abroad,
      int crew,
      boolean taxed) {
    BigDecimal installed() {
      return count.multiply(amount);
    }

    BigDecimal bought() {
      BigDecimal wanted = installed().multiply(withPercent(wastePercent));
      return wanted
          .divide(pack, 30, RoundingMode.HALF_EVEN)
          .setScale(0, RoundingMode.CEILING)
          .multiply(pack);
    }

    BigDecimal material(Ledger ledger) {
      BigDecimal paid = bought().multiply(price);
      return ledger.rounded(abroad ? paid.multiply(ledger.worth) : paid);
    }

    BigDecimal labour(Ledger ledger) {
      BigDecimal rate = crew < 0 ? ledger.rate : ledger.crews.get(crew).rate();
      return ledger.rounded(installed().multiply(hoursEach).multiply(rate));
    }
  }

  /** A crew: people of two rates. */
  record Crew(int leaders, BigDecimal leaderRate, int workers, BigDecimal workerRate) {
    BigDecimal rate() {
      return leaderRate
          .multiply(BigDecimal.valueOf(leaders))
          .add(workerRate.multiply(BigDecimal.valueOf(workers)))
          .divide(BigDecimal.valueOf(leaders + workers), 30, RoundingMode.HALF_EVEN);
    }
  }

  /** One extra. */
  record Extra(String kind, BigDecimal amount, String included) {
    BigDecimal counts(Ledger ledger) {
      boolean out =
          included.equals(Extras.OUT)
              || (included.equals(Extras.USUAL) && kind.equals(Extras.ALTERNATE));
      return out ? BigDecimal.ZERO : ledger.rounded(amount);
    }
  }

  final List<Item> items = new ArrayList<>();
  final List<Crew> crews = new ArrayList<>();

  /** Percent on material, labour, equipment and subcontracts; none where the usual one counts. */
  final Map<String, BigDecimal> markups = new TreeMap<>();

  final List<Extra> extras = new ArrayList<>();

  /** Its decimals are those of ISO 4217, from memory. */
  final String currency;

  private final int decimals;

  /** What one of the other currency costs. */
  final BigDecimal worth;

  final BigDecimal rate;
  final BigDecimal overhead;
  final BigDecimal profit;
  final BigDecimal contingency;
  final BigDecimal tax;
  final String taxOn;

  Ledger(long seed) {
    Random random = new Random(seed);
    int money = random.nextInt(4);
    currency = List.of("", "usd", "JPY", "KWD").get(money);
    decimals = List.of(2, 2, 0, 3).get(money);
    worth = any(random, 200_000, 3).max(BigDecimal.ONE);
    for (int i = random.nextInt(12); i >= 0; i--) {
      items.add(
          new Item(
              any(random, 5000, random.nextInt(2)),
              any(random, 4000, 3),
              any(random, 300, 1),
              any(random, 500, random.nextInt(2)).max(BigDecimal.ONE),
              any(random, 20_000, 2),
              any(random, 4000, 3),
              random.nextInt(4) == 0,
              random.nextInt(3) - 1,
              random.nextInt(3) > 0));
    }
    for (int i = random.nextInt(6); i > 0; i--) {
      BigDecimal amount = any(random, 500_000, 2);
      extras.add(
          new Extra(
              KINDS[random.nextInt(KINDS.length)],
              random.nextInt(4) == 0 ? amount.negate() : amount,
              List.of(Extras.USUAL, Extras.IN, Extras.OUT).get(random.nextInt(3))));
    }
    for (int i = 0; i < 2; i++) {
      crews.add(
          new Crew(
              1 + random.nextInt(2),
              any(random, 12_000, 2),
              random.nextInt(4),
              any(random, 9_000, 2)));
    }
    for (String kind : List.of("material", "labour", Extras.EQUIPMENT, Extras.SUBCONTRACT)) {
      if (random.nextBoolean()) {
        markups.put(kind, any(random, 5000, 2));
      }
    }
    rate = any(random, 12_000, 2);
    overhead = any(random, 3000, 2);
    profit = any(random, 3000, 2);
    contingency = any(random, 1500, 2);
    tax = any(random, 2500, 2);
    taxOn =
        List.of(JobFacts.ON_PRICE, JobFacts.ON_MATERIAL, JobFacts.IN_PRICES).get(random.nextInt(3));
  }

  private static BigDecimal any(Random random, int most, int decimals) {
    return BigDecimal.valueOf(random.nextInt(most), decimals);
  }

  /**
   * To the smallest amount of the currency; half of it, and what is less by a millionth of it at
   * most, goes up.
   */
  BigDecimal rounded(BigDecimal amount) {
    return amount
        .movePointRight(decimals)
        .add(new BigDecimal("0.500001"))
        .setScale(0, RoundingMode.FLOOR)
        .movePointLeft(decimals);
  }

  /** Returns an amount of a column as it is in decimal money. */
  BigDecimal money(double amount) {
    return BigDecimal.valueOf(amount).setScale(decimals, RoundingMode.HALF_UP);
  }

  private static BigDecimal withPercent(BigDecimal percent) {
    return BigDecimal.ONE.add(percent.movePointLeft(2));
  }

  private BigDecimal part(BigDecimal amount, BigDecimal percent) {
    return rounded(amount.multiply(percent.movePointLeft(2)));
  }

  BigDecimal material() {
    return items.stream().map(item -> item.material(this)).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal labour() {
    return items.stream().map(item -> item.labour(this)).reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal direct() {
    return extras.stream()
        .map(extra -> extra.counts(this))
        .reduce(material().add(labour()), BigDecimal::add);
  }

  BigDecimal overheadAmount() {
    BigDecimal rest = direct();
    BigDecimal all = BigDecimal.ZERO;
    for (Map.Entry<String, BigDecimal> each : markups.entrySet()) {
      BigDecimal cost = cost(each.getKey());
      rest = rest.subtract(cost);
      all = all.add(cost.multiply(each.getValue().movePointLeft(2)));
    }
    return rounded(all.add(rest.multiply(overhead.movePointLeft(2))));
  }

  private BigDecimal cost(String kind) {
    if (kind.equals("material")) {
      return material();
    }
    return kind.equals("labour")
        ? labour()
        : extras.stream()
            .filter(extra -> extra.kind().equals(kind))
            .map(extra -> extra.counts(this))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal taxedMaterial() {
    return items.stream()
        .filter(Item::taxed)
        .map(item -> item.material(this))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  BigDecimal profitAmount() {
    return part(direct().add(overheadAmount()), profit);
  }

  BigDecimal contingencyAmount() {
    return part(direct().add(overheadAmount()).add(profitAmount()), contingency);
  }

  BigDecimal builtUp() {
    return direct().add(overheadAmount()).add(profitAmount()).add(contingencyAmount());
  }

  BigDecimal netPrice() {
    return taxOn.equals(JobFacts.IN_PRICES) ? builtUp().subtract(taxAmount()) : builtUp();
  }

  BigDecimal taxAmount() {
    return switch (taxOn) {
      case JobFacts.ON_MATERIAL -> part(taxedMaterial(), tax);
      case JobFacts.IN_PRICES ->
          rounded(
              builtUp()
                  .multiply(tax)
                  .divide(tax.add(BigDecimal.valueOf(100)), MathContext.DECIMAL128));
      default -> part(builtUp(), tax);
    };
  }

  BigDecimal total() {
    return netPrice().add(taxAmount());
  }
}
