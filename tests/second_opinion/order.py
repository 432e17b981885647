# SPDX-License-Identifier: GPL-3.0-or-later
"""Whether a plan can be lived with: the order of its steps, the waits, the bath. Rules of the trade,
from memory where no source stands beside them."""

ACIDS = {"hydrochloric_acid", "sodium_bisulfate", "potassium_monopersulfate", "alum", "cyanuric_acid",
         "ascorbic_acid"}
CHLORINES = {"sodium_hypochlorite", "calcium_hypochlorite", "dichlor", "trichlor"}
CARBONATES = {"sodium_bicarbonate", "sodium_carbonate", "sodium_sesquicarbonate"}
STABILISED = {"cyanuric_acid", "dichlor", "trichlor"}
# Never in a vessel kept by this sanitizer (biguanide: a trade journal; the rest from memory)
NEVER = {"biguanide": CHLORINES | {"bcdmh", "sodium_bromide", "potassium_monopersulfate", "cyanuric_acid",
                                   "sequestrant"},
         "bromine": CHLORINES | {"cyanuric_acid", "phmb"},
         "chlorine": {"bcdmh", "sodium_bromide", "phmb"},
         "salt_chlorine": {"bcdmh", "sodium_bromide", "phmb"}}


def end_of(step):
    """Hours from coming home to when the last portion is in."""
    return step["start_h"] + (step["portions"] - 1) * step["portion_gap_h"]


def too_near(first, second, spa):
    """Why these two must not lie this near each other; None where they may."""
    a, b, hours = first["chemical"], second["chemical"], second["start_h"] - end_of(first) + 1e-6
    pair = lambda these, those: (a in these and b in those) or (a in those and b in these)
    if pair(ACIDS, CHLORINES) and hours < (1 if spa else 4):
        return "acid and chlorine within the hours"
    if pair({"calcium_chloride"}, CARBONATES) and hours < 24:
        return "calcium chloride and carbonate on one day"
    if pair({"calcium_hypochlorite"}, {"dichlor", "trichlor"}):  # J Toxicol Clin Toxicol 1995;33:349-54
        return "calcium hypochlorite with stabilised chlorine in one plan"
    return None


def faults_of(visit, plan):
    out = []
    vessel, steps = visit["vessel"], plan["steps"]
    spa, hot = vessel["kind"] in ("spa", "swim_spa"), vessel["kind"] == "spa"
    end = 0.0

    def say(step, what):
        out.append(f"{visit['id']} step {step['order']} {step.get('chemical') or step['action']}: {what}")

    for number, step in enumerate(steps, 1):
        if step["order"] != number:
            say(step, f"is number {number}")
        if step["start_h"] + 1e-6 < end:
            say(step, "starts before the step before it has waited")
        end = end_of(step) + step["wait_h"]
    added = [s for s in steps if s["action"] == "add"]
    for i, second in enumerate(added):
        chemical = second["chemical"]
        if chemical in NEVER[vessel["sanitizer"]]:
            say(second, f"never with {vessel['sanitizer']}")
        if chemical in STABILISED and (vessel["place"] == "indoor" or (hot and chemical != "dichlor")):
            say(second, "stabiliser indoors or in a spa")
        for first in added[:i]:
            why = too_near(first, second, spa)
            if why:
                say(second, why)
    drained = [s["order"] for s in steps if s["action"] == "drain_refill"]
    if drained and any(s["order"] < max(drained) for s in added):
        say(added[0], "poured before the drain throws it away")
    retests = [s["order"] for s in steps if s["action"] == "retest"]
    if retests and retests[0] != len(steps):
        say(steps[retests[0] - 1], "goes on after the retest")
    return out + bath_faults(visit, plan, end, spa)


def bath_faults(visit, plan, end, spa):
    """The bath: closed where the readings say so, open only once chlorine is down or a retest has said so."""
    out, swim, name = [], plan["swim"], visit["id"]
    readings = {r["analyte"]: r["value"] for r in visit["readings"]}
    ph, free = readings["ph"], readings.get("free_chlorine")
    level = 5 if spa else 4  # mg/L: common wording of labels, from memory
    closed = ph < 7.0 or ph > 8.2 or (free is not None and (free < 0.5 or free > 10))
    if closed and swim["now"] != "no":
        out.append(f"{name}: bathing is open at pH {ph}, free chlorine {free}")
    open_h = swim.get("not_before_h")
    retest_h = end + plan["retest"]["after_h"]
    for step in plan["steps"]:
        if open_h is None or step["start_h"] > open_h or step.get("chemical") not in CHLORINES:
            continue
        free = (step.get("after") or {}).get("free_chlorine", 0)
        if free > level + 0.05 and open_h + 1e-6 < retest_h:
            out.append(f"{name}: open at hour {open_h} with {free:.1f} mg/L poured, before the retest")
        if open_h + 1e-6 < end_of(step) + (0.5 if spa else 3):  # 3 h: a public guideline (New South Wales)
            out.append(f"{name}: open {open_h - end_of(step):.1f} h after chlorine")
    if plan.get("proof") and plan["proof"]["harm"] > 0.01:
        out.append(f"{name}: harm {plan['proof']['harm']}")
    return out
