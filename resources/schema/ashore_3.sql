-- Version 3: what was undone.
CREATE TABLE undone (
    vessel text NOT NULL,
    fact text NOT NULL,
    PRIMARY KEY (vessel, fact),
    FOREIGN KEY (vessel, fact) REFERENCES fact (vessel, id) DEFERRABLE INITIALLY DEFERRED
);
CREATE TRIGGER of_its_kind AFTER INSERT ON undone REFERENCING NEW TABLE AS fresh
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_other_kind();
CREATE TRIGGER only_added BEFORE UPDATE OR DELETE OR TRUNCATE ON undone
    FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
