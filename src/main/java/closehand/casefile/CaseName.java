package closehand.casefile;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What cases are called: two words that say nothing about anybody.
 *
 * <p>A lawful name has 1 to 64 small letters, digits and hyphens and does not begin with a hyphen,
 * so it can be a file's name on every system and never leads out of the folder. Names of devices
 * are not lawful.
 */
public final class CaseName {
  /** Longest lawful name, in characters. */
  static final int LONGEST = 64;

  private static final List<String> BIRDS =
      words(
          """
          avocet bittern bluetit bunting bustard chough coot crane curlew dipper dunlin
          dunnock egret eider falcon fieldfare finch gannet godwit goldcrest goosander goshawk
          grebe harrier heron hobby hoopoe jackdaw kestrel kingfisher kite knot lapwing linnet
          magpie nightjar nuthatch oriole osprey ouzel petrel pintail pipit plover puffin
          redstart redwing rook sandpiper shearwater shrike siskin skylark snipe stork swallow
          swift teal tern thrush turnstone wagtail wheatear whimbrel
          """);

  private static final List<String> TREES =
      words(
          """
          acacia alder almond apple aspen balsa banyan baobab beech birch blackthorn boxwood
          buckthorn camphor cashew catalpa cedar chestnut cypress dogwood ebony elder elm fig
          fir ginkgo guava hawthorn hemlock hickory hornbeam ironwood kapok laburnum larch
          lemon lime magnolia mahogany mango maple medlar mulberry nutmeg oak orange palm pear
          pine plane plum poplar quince redwood sequoia spindle spruce sycamore tamarisk teak
          walnut whitebeam yew zelkova
          """);

  /** What Windows takes for a device whatever follows a dot ("Naming Files", Windows documents). */
  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

  private static final Pattern NUMBERED_DEVICE = Pattern.compile("(com|lpt)[0-9]");

  private CaseName() {}

  private static List<String> words(String list) {
    return List.of(list.strip().replace('\n', ' ').split(" "));
  }

  /** The name with this number; numbers 4,096 apart have the same name. */
  public static String of(long number) {
    int birds = BIRDS.size();
    int at = (int) Math.floorMod(number, (long) birds * TREES.size());
    return BIRDS.get(at % birds) + "-" + TREES.get(at / birds);
  }

  /** How many names there are. */
  public static int count() {
    return BIRDS.size() * TREES.size();
  }

  /** Whether a case can have this name. */
  public static boolean isLawful(String name) {
    if (name.isEmpty() || name.length() > LONGEST || name.charAt(0) == '-') {
      return false;
    }
    if (DEVICES.contains(name) || NUMBERED_DEVICE.matcher(name).matches()) {
      return false;
    }
    return name.chars().allMatch(c -> (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-');
  }
}
