using Runup.Store.Folder;

namespace Runup.Store.Tests;

public sealed class FolderFitnessTests
{
    // Form of the lines: proc_pid_mountinfo(5).
    private const string Table =
        """
        22 1 254:0 / / rw,relatime - ext4 /dev/vda rw
        30 22 0:40 / /mnt/plant rw,relatime shared:7 - nfs4 server:/plant rw,vers=4.2
        31 22 0:41 / /mnt/my\040stick rw - fuseblk /dev/sdb1 rw
        32 22 0:42 / /mnt/plant/local rw - xfs /dev/sdc rw
        33 22 0:43 / /people rw - ext4 /dev/vdb rw
        34 22 0:44 / /people rw - fuse.sshfs host: rw
        """;

    [Theory]
    [InlineData("/srv/site", "ext4")]
    [InlineData("/mnt/plant", "nfs4")]
    [InlineData("/mnt/plant/site", "nfs4")]
    [InlineData("/mnt/plantation", "ext4")]
    [InlineData("/mnt/plant/local/site", "xfs")]
    [InlineData("/mnt/my stick/site", "fuseblk")]
    [InlineData("/people/n/site", "fuse.sshfs")]
    public void The_nearest_and_latest_mount_decides(string path, string type) => MountTable.TypeOf(Table, path).ShouldBe(type);

    [Fact]
    public void A_table_that_says_nothing_answers_nothing() => MountTable.TypeOf("none\n\n - ", "/srv").ShouldBeNull();

    [Theory]
    [InlineData("nfs")]
    [InlineData("nfs4")]
    [InlineData("cifs")]
    [InlineData("smb3")]
    [InlineData("9p")]
    [InlineData("fuse.sshfs")]
    public void A_shared_file_system_is_refused(string type) => FolderFitness.Objection(type)!.ShouldContain(type);

    [Theory]
    [InlineData("ext4")]
    [InlineData("xfs")]
    [InlineData("btrfs")]
    [InlineData("tmpfs")]
    [InlineData("overlay")]
    [InlineData("vfat")]
    [InlineData("exfat")]
    [InlineData("fuseblk")]
    public void A_file_system_of_this_computer_is_accepted(string type) => FolderFitness.Objection(type).ShouldBeNull();
}
