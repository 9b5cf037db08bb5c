-- Which bonds were known when a reason for setting them aside was given: those that come later are asked about again.
-- Unknown for reasons given before, which are taken to stand for every bond.
alter table seat add column override_grounds varchar(20000);
