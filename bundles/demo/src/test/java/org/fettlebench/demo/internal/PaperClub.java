package org.fettlebench.demo.internal;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fettlebench.club.KitShelf;
import org.fettlebench.club.Loan;
import org.fettlebench.club.Movement;
import org.fettlebench.club.Receipt;
import org.fettlebench.club.Stock;
import org.fettlebench.club.StockLine;

/** Stock and shelf in memory: what the demo needs of them, and no more. */
final class PaperClub {
  final List<StockLine> lines = new ArrayList<>();
  final Map<String, String> kits = new LinkedHashMap<>();
  int receivings;

  final KitShelf shelf =
      new KitShelf() {
        @Override
        public List<KeptKit> kits() {
          return kits.keySet().stream().map(name -> kit(name).orElseThrow()).toList();
        }

        @Override
        public Optional<KeptKit> kit(String name) {
          return Optional.ofNullable(kits.get(name))
              .map(text -> new KeptKit(name, text, Instant.EPOCH));
        }

        @Override
        public Optional<KeptKit> keep(String name, String text) {
          Optional<KeptKit> before = kit(name);
          kits.put(name, text);
          return before;
        }

        @Override
        public Optional<KeptKit> remove(String name) {
          Optional<KeptKit> before = kit(name);
          kits.remove(name);
          return before;
        }
      };

  final Stock stock =
      (Stock)
          java.lang.reflect.Proxy.newProxyInstance(
              Stock.class.getClassLoader(),
              new Class<?>[] {Stock.class},
              (proxy, method, given) ->
                  switch (method.getName()) {
                    case "lines" -> List.copyOf(lines);
                    case "receive" -> receive((List<?>) given[0]);
                    case "lend" -> lend((Long) given[0], (Integer) given[1], given[2], given[3]);
                    default -> throw new UnsupportedOperationException(method.getName());
                  });

  private List<Movement> receive(List<?> receipts) {
    receivings++;
    for (Object each : receipts) {
      Receipt receipt = (Receipt) each;
      lines.add(
          new StockLine(
              lines.size() + 1,
              receipt.goods(),
              receipt.place(),
              receipt.condition(),
              receipt.quantity(),
              List.of(),
              receipt.lowMark()));
    }
    return List.of();
  }

  private Object lend(long id, int quantity, Object member, Object due) {
    StockLine line = lines.get((int) id - 1);
    Optional<LocalDate> until = ((Optional<?>) due).map(LocalDate.class::cast);
    lines.set(
        (int) id - 1,
        new StockLine(
            id,
            line.goods(),
            line.place(),
            line.condition(),
            line.quantity(),
            List.of(new Loan(member.toString(), quantity, until)),
            line.lowMark()));
    return null;
  }
}
