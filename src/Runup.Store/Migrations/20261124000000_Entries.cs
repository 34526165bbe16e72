using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Runup.Store.Migrations
{
    /// <summary>The table of entries, and triggers that refuse to change it.</summary>
    internal sealed partial class Entries : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "entries",
                columns: table => new
                {
                    sequence = table.Column<long>(type: "INTEGER", nullable: false),
                    at = table.Column<string>(type: "TEXT", nullable: false),
                    tag = table.Column<string>(type: "TEXT", nullable: false),
                    hash = table.Column<string>(type: "TEXT", nullable: false),
                    body = table.Column<string>(type: "TEXT", nullable: false),
                },
                constraints: table => table.PrimaryKey("PK_entries", x => x.sequence));
            migrationBuilder.Sql(AppendOnly.Triggers);
            migrationBuilder.Sql($"PRAGMA application_id = {AppendOnly.ApplicationId};");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) =>
            throw new System.NotSupportedException("The record is append-only: its first table is never removed.");
    }
}
