-- A password that somebody else chose, and so knows; its owner replaces it before anything else. Of accounts that
-- were made before, nobody knows whose choice theirs was.
alter table person add column password_temporary boolean default false not null;
