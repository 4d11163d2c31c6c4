SHELL := bash
.SHELLFLAGS := -euo pipefail -c
.DEFAULT_GOAL := help

BIN := .venv/bin
RUN_STAMP := .venv/.installed-run
TEST_STAMP := .venv/.installed-test
EXAMPLE := example_notebooks/tideline_wrap_top.ipynb

.PHONY: help demo lab test bench mutants fuzz bad-days lowest lint format clean

help:
	@echo "make demo    build the Tideline wrap top's booklet and pattern pages into out/tideline-wrap-top"
	@echo "make lab     open the example lessons in JupyterLab"
	@echo "make test    run every check (installs what it needs first);  make test PARTS=\"types browser\"  only these"
	@echo "make bench   run the benchmarks"
	@echo "make mutants try 300 small faults in the kit's code against its tests (an hour or more)"
	@echo "make fuzz    try the example lessons with sliders and bodies at random, 400 settings each; FUZZ=2000 for more"
	@echo "make bad-days  rehearse faults of all kinds (killed builds, full disks, lost workers) and write the table of them"
	@echo "make lowest  try the lowest versions of all libraries that pyproject.toml allows"
	@echo "make lint    check style and types;  make format  put the style right"
	@echo "make clean   remove what was built (out/, dist/, caches; .venv stays)"

.venv/bin/python:
	@bash .ci/make-venv

$(RUN_STAMP): pyproject.toml | .venv/bin/python
	@echo "Installing the kit into .venv (a few minutes the first time) ..."
	@bash .ci/install run
	@touch $@

$(TEST_STAMP): pyproject.toml | .venv/bin/python
	@echo "Installing the kit and its test tools into .venv (a few minutes the first time) ..."
	@bash .ci/install test
	@touch $(RUN_STAMP) $@

demo: $(RUN_STAMP)
	@bash .ci/system-packages pango
	@$(BIN)/lessonkit build $(EXAMPLE) --size W4 --units cm --out out/tideline-wrap-top

lab: $(RUN_STAMP)
	@PATH="$(CURDIR)/$(BIN):$$PATH" $(BIN)/jupyter lab example_notebooks

# Every part is run, whatever the others say; the summary at the end names what failed. PARTS="types browser" runs these.
test: $(TEST_STAMP)
	@bash .ci/system-packages pango test
	@bash .ci/hub
	@$(BIN)/python .ci/check.py $(PARTS)

mutants: $(TEST_STAMP)
	@bash .ci/system-packages pango test
	@$(BIN)/python tests/bench/mutants.py --count 300 --jobs 2 --seed 1

fuzz: $(TEST_STAMP)
	@KIT_FUZZ=$(or $(FUZZ),400) $(BIN)/python -m pytest -p no:nbval tests/fuzz -n auto

bad-days: $(TEST_STAMP)
	@KIT_BAD_DAYS=1 $(BIN)/python -m pytest -p no:nbval -q tests/bad_days
	@cat tests/bad_days/bad_days.md

bench: $(TEST_STAMP)
	@bash .ci/system-packages pango test
	@$(BIN)/python -m pytest tests/bench --benchmark-columns=min,median,mean,stddev,rounds

# A fresh environment with every runtime dependency at its lower bound: a booklet built, quick tests run.
lowest: .venv/bin/python
	@bash .ci/system-packages pango
	@$(BIN)/python .ci/lowest.py

lint: $(TEST_STAMP)
	@$(BIN)/python .ci/check.py style format types

format: $(TEST_STAMP)
	@$(BIN)/ruff check --fix .
	@$(BIN)/ruff format .

clean:
	@rm -rf out dist build .pytest_cache .ruff_cache .mypy_cache .hypothesis .benchmarks
	@find kit tests -name __pycache__ -type d -prune -exec rm -rf {} +
