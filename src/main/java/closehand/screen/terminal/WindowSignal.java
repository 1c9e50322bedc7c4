package closehand.screen.terminal;

import java.lang.reflect.Proxy;

/**
 * The signal that a terminal sends when its window changes size.
 *
 * <p>Reached by reflection, since the class is not part of every Java; where it is missing, a new
 * size is noticed with Ctrl-L only.
 */
final class WindowSignal {
  private WindowSignal() {}

  /**
   * Runs this whenever the window changes size, on a thread of the signal's.
   *
   * @return whether the signal is to be had
   */
  static boolean onChange(Runnable action) {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> handler = Class.forName("sun.misc.SignalHandler");
      Object ours =
          Proxy.newProxyInstance(
              WindowSignal.class.getClassLoader(),
              new Class<?>[] {handler},
              (proxy, method, arguments) -> {
                switch (method.getName()) {
                  case "handle" -> action.run();
                  case "equals" -> {
                    return proxy == arguments[0];
                  }
                  case "hashCode" -> {
                    return System.identityHashCode(proxy);
                  }
                  case "toString" -> {
                    return "the window's signal";
                  }
                  default -> {}
                }
                return null;
              });
      signal
          .getMethod("handle", signal, handler)
          .invoke(null, signal.getConstructor(String.class).newInstance("WINCH"), ours);
      return true;
    } catch (ReflectiveOperationException | RuntimeException e) {
      return false;
    }
  }
}
