using Microsoft.EntityFrameworkCore;

namespace Runup.Store.Model;

/// <summary>The record's database as EF Core sees it.</summary>
internal sealed class RecordContext(DbContextOptions<RecordContext> options) : DbContext(options)
{
    public DbSet<EntryRow> Entries => Set<EntryRow>();

    /// <summary>The model, also for the tests that hold the generated one against it.</summary>
    internal static void Describe(ModelBuilder modelBuilder) => modelBuilder.Entity<EntryRow>(entry =>
    {
        entry.ToTable("entries");
        entry.HasKey(e => e.Sequence);
        // The small columns stand first, so that a search by tag never touches the long bodies.
        entry.Property(e => e.Sequence).HasColumnName("sequence").HasColumnOrder(0).ValueGeneratedNever();
        entry.Property(e => e.At).HasColumnName("at").HasColumnOrder(1);
        entry.Property(e => e.Tag).HasColumnName("tag").HasColumnOrder(2);
        entry.Property(e => e.Hash).HasColumnName("hash").HasColumnOrder(3);
        entry.Property(e => e.Body).HasColumnName("body").HasColumnOrder(4);
    });

    protected override void OnModelCreating(ModelBuilder modelBuilder) => Describe(modelBuilder);
}
