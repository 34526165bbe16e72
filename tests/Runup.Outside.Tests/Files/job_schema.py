"""Validates job files against the shipped JSON Schema with independent programs: PyYAML (YAML 1.1) and jsonschema.

Arguments: schema, page with examples. Prints one JSON object.
"""
import copy
import json
import re
import sys

import jsonschema
import yaml

schema = json.load(open(sys.argv[1], encoding="utf-8"))
page = open(sys.argv[2], encoding="utf-8").read()
jsonschema.Draft202012Validator.check_schema(schema)
validator = jsonschema.Draft202012Validator(schema)
jobs = [yaml.safe_load(body) for body in re.findall(r"^```yaml job\n(.*?)^```$", page, re.M | re.S)]
said = {"jobs": [[e.message for e in validator.iter_errors(job)] for job in jobs], "refused": {}}


def refused(name, change):
    job = copy.deepcopy(jobs[-1])
    change(job)
    said["refused"][name] = not validator.is_valid(job)


refused("a number without its unit", lambda j: j["motor"]["plate"].update(output="7.5"))
refused("a bare number", lambda j: j["motor"]["plate"].update(output=7.5))
refused("a unit of something else", lambda j: j["motor"]["plate"].update(output="7.5 kg"))
refused("an unknown key", lambda j: j["motor"].update(colour="blue"))
refused("an unknown word", lambda j: j["machine"].update(load="cubic"))
refused("a needed key that is missing", lambda j: j["motor"]["plate"].pop("current"))
refused("a load without its torque", lambda j: j["machine"].pop("torque"))
refused("a hoist without its mass", lambda j: j["machine"].update(load="hoisting"))
refused("an unknown origin", lambda j: j["machine"]["torque"].update({"from": "dreamt"}))
refused("another format", lambda j: j.update(runup=2))
refused("two phases", lambda j: j["supply"].update(phases=2))
accepted = copy.deepcopy(jobs[-1])
accepted["supply"]["phases"] = 3
accepted["bus"] = "none"
accepted["cable"] = None
said["variant"] = [e.message for e in validator.iter_errors(accepted)]
print(json.dumps(said))
