package lungfish.catalogue;

import java.util.List;
import java.util.Optional;

/** What is needed to build pipe beyond the pipe itself: threads, joints, small things. */
public record BuildingClasses(List<ThreadClass> threads, List<PipeJoints> joints, List<SupplyClass> supplies) {
    public BuildingClasses {
        threads = List.copyOf(threads);
        joints = List.copyOf(joints);
        supplies = List.copyOf(supplies);
    }

    public Optional<ThreadClass> thread(String id) {
        return threads.stream().filter(each -> each.id().equals(id)).findFirst();
    }

    /** How a pipe size is joined. */
    public Optional<PipeJoints> joints(String pipe) {
        return joints.stream().filter(each -> each.pipe().equals(pipe)).findFirst();
    }

    /**
     * A small thing of the catalogue.
     *
     * @throws IllegalArgumentException if there is none of that id: a mistake of the program
     */
    public SupplyClass supply(String id) {
        return supplies.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no supply '" + id + "'"));
    }
}
