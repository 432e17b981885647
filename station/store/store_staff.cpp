// SPDX-License-Identifier: GPL-3.0-or-later
// Staff, and the tries at their PINs.
#include "station/store/staff_book.h"

namespace brimline {

namespace {

std::string role_text(StaffRole role) {
  return role == StaffRole::keeper ? "keeper" : "clerk";
}

StaffMember member_of(const QVariantList& row) {
  StaffMember out{Connection::text(row[0]),
                  Connection::text(row[1]),
                  Connection::text(row[2]) == "keeper" ? StaffRole::keeper : StaffRole::clerk,
                  Connection::text(row[3]),
                  row[4].toInt() != 0,
                  row[5].toInt(),
                  std::nullopt};
  if (!row[6].isNull()) out.wait_until_s = row[6].toLongLong();
  return out;
}

std::vector<StaffMember> all_of(Connection& c) {
  std::vector<StaffMember> out;
  for (const QVariantList& row :
       c.ask("SELECT id, name, role, pin_hash, gone, failures, wait_until_s FROM staff ORDER BY name, id"))
    out.push_back(member_of(row));
  return out;
}

std::optional<StaffMember> member(Connection& c, const std::string& id) {
  for (StaffMember& one : all_of(c))
    if (one.id == id) return std::move(one);
  return std::nullopt;
}

void put_tries(Connection& c, const StaffMember& member) {
  c.tell("UPDATE staff SET failures = ?, wait_until_s = ? WHERE id = ?",
         {member.failures,
          member.wait_until_s ? QVariant::fromValue<qint64>(*member.wait_until_s)
                              : QVariant(QMetaType::fromType<qint64>()),
          Connection::value(member.id)});
}

// Somebody must be left who can let others in.
bool keeper_left(Connection& c) {
  bool any = false, keeper = false;
  for (const StaffMember& one : all_of(c)) {
    any = any || !one.gone;
    keeper = keeper || (!one.gone && one.role == StaffRole::keeper);
  }
  return !any || keeper;
}

}  // namespace

Stored<std::vector<StaffMember>> staff(Store& store) {
  return store.connection().transact(Access::read, [&] { return all_of(store.connection()); });
}

Stored<void> keep_staff(Store& store, const StaffMember& now) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    const auto before = member(c, now.id);
    if (now.id.empty() || now.name.empty() || now.pin_hash.empty())
      return c.fail({StoreTrouble::refused, "a member of staff needs a name and a PIN"});
    c.tell(
        "INSERT INTO staff (id, name, role, pin_hash, gone, failures) VALUES (?, ?, ?, ?, ?, 0) ON CONFLICT "
        "(id) DO UPDATE SET name = excluded.name, role = excluded.role, pin_hash = excluded.pin_hash, gone = "
        "excluded.gone",
        {Connection::value(now.id), Connection::value(now.name), Connection::value(role_text(now.role)),
         Connection::value(now.pin_hash), int{now.gone}});
    if (!keeper_left(c))
      return c.fail({StoreTrouble::refused, "one keeper must stay: nobody could let others in"});
    const auto changed = [&](const char* field, std::optional<std::string> was,
                             std::optional<std::string> is) {
      if (was != is) (void)store.note({"staff", now.id, field, std::move(was), std::move(is), std::nullopt});
    };
    const auto of = [&](auto read) {
      return before ? std::optional<std::string>(read(*before)) : std::nullopt;
    };
    changed("name", of([](const StaffMember& m) { return m.name; }), now.name);
    changed("role", of([](const StaffMember& m) { return role_text(m.role); }), role_text(now.role));
    changed("gone", of([](const StaffMember& m) { return std::string(m.gone ? "yes" : "no"); }),
            now.gone ? "yes" : "no");
    if (before && before->pin_hash != now.pin_hash) {
      (void)store.note({"staff", now.id, "pin", std::nullopt, std::nullopt, std::nullopt});
      put_tries(c, {now.id, now.name, now.role, now.pin_hash, now.gone, 0, std::nullopt});
    }
  });
}

Stored<PinTry> begin_pin_try(Store& store, const std::string& id) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    PinTry out;
    auto found = member(c, id);
    if (!found || found->gone) {
      c.fail({StoreTrouble::refused, "there is no such member of staff"});
      return out;
    }
    const std::int64_t now = store.signature().at.utc.time_since_epoch().count();
    out.wait_s = seconds_to_wait(*found, now);
    if (out.wait_s > 0) return out;
    out.hash = found->pin_hash;
    ++found->failures;
    found->wait_until_s = now + wait_after(found->failures);
    put_tries(c, *found);
    return out;
  });
}

Stored<void> end_pin_try(Store& store, const std::string& id, bool right) {
  Connection& c = store.connection();
  return c.transact(Access::write, [&] {
    auto found = member(c, id);
    if (!found) return;
    if (!right) {
      if (wait_after(found->failures) > 0)
        (void)store.note({"staff", id, "wrong PIN", std::nullopt,
                          std::to_string(found->failures) + " in a row", std::nullopt});
      return;
    }
    found->failures = 0;
    found->wait_until_s.reset();
    put_tries(c, *found);
  });
}

}  // namespace brimline
