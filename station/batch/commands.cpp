// SPDX-License-Identifier: GPL-3.0-or-later
#include "station/batch/commands.h"

namespace brimline::batch {

// One declaration and one row a command; the function stands in NAME_command.cpp.
int backup_command(const Arguments& arguments);
int check_command(const Arguments& arguments);
int compare_command(const Arguments& arguments);
int demand_command(const Arguments& arguments);
int dose_command(const Arguments& arguments);
int export_command(const Arguments& arguments);
int find_command(const Arguments& arguments);
int import_command(const Arguments& arguments);
int keep_command(const Arguments& arguments);
int listen_command(const Arguments& arguments);
int move_command(const Arguments& arguments);
int plan_command(const Arguments& arguments);
int print_command(const Arguments& arguments);
int profiles_command(const Arguments& arguments);
int restore_command(const Arguments& arguments);
int tables_command(const Arguments& arguments);
int verify_command(const Arguments& arguments);
int water_command(const Arguments& arguments);

std::span<const Command> commands() {
  static const std::vector<Command> rows = {
      {"backup", "--database URL --out F", backup_command},
      {"check", "VISIT [--earlier VISIT]... [--supplies FILE] [--language en|es|fr]", check_command},
      {"compare", "EARLIER LATER ...", compare_command},
      {"demand", "VISIT [--language en|es|fr]", demand_command},
      {"dose", "[--in F] [--out F] [--threads N] [--columns a,b,c]", dose_command},
      {"export", "--database URL [--out F]", export_command},
      {"find", "--database URL TEXT | --batch", find_command},
      {"import", "--database URL [--customers F]... [--readings F]... [--dry-run] [--skip-faulty]",
       import_command},
      {"keep", "--database URL", keep_command},
      {"listen", "--port PATH --profile NAME|FILE [--record F] [--for SECONDS]", listen_command},
      {"move", "--from URL --to URL", move_command},
      {"plan", "VISIT [--earlier VISIT]... [--shelf DIR] [--targets NAME|FILE] [--language en|es|fr]",
       plan_command},
      {"print",
       "VISIT --out F.pdf [--paper letter|a4|roll80] [--language en|es|fr] [--large] [--earlier VISIT]... "
       "[--settings INI] [--sheet take_home|shelf|staff|label]",
       print_command},
      {"profiles", "[--check FILE]", profiles_command},
      {"restore", "--from F --database URL [--replace]", restore_command},
      {"tables", "--database URL --out FOLDER [--replace]", tables_command},
      {"verify", "--database URL", verify_command},
      {"water", "[--in F] [--out F] [--threads N] [--columns a,b,c]", water_command},
  };
  return rows;
}

}  // namespace brimline::batch
