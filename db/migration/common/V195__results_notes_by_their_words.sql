-- What a version says about itself by its key and arguments, so that it is said in every language; none where it is words
-- alone, as in all versions so far.
alter table result_version add column said varchar(20000);
