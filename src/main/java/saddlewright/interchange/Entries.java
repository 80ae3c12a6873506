package saddlewright.interchange;

import java.util.ArrayList;
import java.util.List;

/** The resources of a bundle, in the order in which they were finished. */
final class Entries {
  private final List<Resource> resources = new ArrayList<>();

  Resource add(Resource resource) {
    resources.add(resource);
    return resource;
  }

  List<Resource> all() {
    return List.copyOf(resources);
  }
}
