package org.fettlebench.command.internal.thread;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** Answers given lately: long lists ask for few things again and again, and memory stays flat. */
final class Recent<K, V> {
  private static final int MOST = 4_000;

  private final Function<K, V> answer;
  private final Map<K, V> kept =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
          return size() > MOST;
        }
      };

  Recent(Function<K, V> answer) {
    this.answer = answer;
  }

  V of(K key) {
    V known = kept.get(key);
    if (known == null) {
      known = answer.apply(key);
      kept.put(key, known);
    }
    return known;
  }
}
